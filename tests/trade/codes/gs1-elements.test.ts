import * as bwip from "bwip-js/node";
import { as, type Kilograms } from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import {
  elementString,
  FUNCTION_1,
  logisticUnit,
  lotElement,
  packedInside,
  poundsElement,
  soldItem,
} from "../../../src/trade/codes/gs1-elements";

const pounds = (lb: number): Kilograms => as<Kilograms>(lb * KG_PER_LB);
// Source: 37610425002123456 has the check digit 9, net-contents.md section 5; 614141000036 gives 10614141000033.
const unit = logisticUnit("376104250021234569");
const item = soldItem("10614141000033");
const inside = packedInside("10614141000033", 12);
const lot = lotElement("26-04");
const net = poundsElement("net", pounds(2912));

describe("weights on a label say what the scale said", () => {
  test.each([
    [2912, "3200", "002912"],
    [2912.5, "3201", "029125"],
    [14.25, "3202", "001425"],
    [0.04536, "3205", "004536"],
    [999_999, "3200", "999999"],
  ])("%d lb net", (lb, identifier, value) => {
    // Source: element syntax dictionary, (320n) six digits, n of them decimals.
    expect(poundsElement("net", pounds(lb))).toEqual({ identifier, value });
  });

  test.each([1_000_000, 29_121.25, 0.000001, 0])(
    "%d lb fits no six digits and is not rounded into them",
    (lb) => {
      expect(() => poundsElement("net", pounds(lb))).toThrow(/six digits/);
    },
  );

  test("gross has an identifier of its own", () => {
    expect(poundsElement("gross", pounds(3047)).identifier).toBe("3400");
  });
});

describe("what is put together belongs together", () => {
  test("an open length is parted from what follows, a fixed one and the last are not", () => {
    // Source: element syntax dictionary, (10) X..20 needs FNC1 unless last.
    expect(elementString([item, lot, net])).toEqual({
      text: "(01)10614141000033(10)26-04(3200)002912",
      data: `01106141410000331026-04${FUNCTION_1}3200002912`,
    });
    expect(elementString([item, net, lot]).data).toBe(
      "0110614141000033320000291210" + "26-04",
    );
  });

  test("a pallet says its number, what is inside and how many", () => {
    expect(elementString([unit, ...inside]).text).toBe(
      "(00)376104250021234569(02)10614141000033(37)12",
    );
  });

  test.each([
    ["02 alone", [inside[0]], /\(02\) needs \(37\)/],
    ["37 alone", [inside[1]], /\(37\) needs \(02\)/],
    ["a lot of nothing", [lot], /\(10\) needs \(01\) or \(02\)/],
    ["a net weight of nothing", [unit, net], /\(3200\) needs/],
    [
      "a gross weight without its unit",
      [poundsElement("gross", pounds(9))],
      /needs \(00\)/,
    ],
    ["one thing twice", [item, item], /stands twice/],
    ["an item both sold whole and packed inside", [item, ...inside], /exclude/],
  ] as const)("refused: %s", (_, elements, says) => {
    expect(() => elementString(elements)).toThrow(says);
  });

  test("a general bar code library refuses 01 with 02 and 37 as well, and takes ours", () => {
    const draws = (text: string) => bwip.raw({ bcid: "gs1-128", text });
    expect(() =>
      draws(`${elementString([item]).text}(02)10614141000033(37)12`),
    ).toThrow(/exclusive/);
    for (const elements of [
      [unit, ...inside],
      [item, net, lot],
    ])
      expect(draws(elementString(elements).text)).toHaveLength(1);
  });
});

test.each([
  ["26/04 é", /holds " "/],
  ["L".repeat(21), /21 characters/],
  ["", /0 characters/],
])("a lot the bars cannot hold is refused: %s", (written, says) => {
  expect(() => lotElement(written)).toThrow(says);
});

test("a mistyped number is refused", () => {
  expect(() => logisticUnit("376104250021234568")).toThrow(/check digit/);
  expect(() => soldItem("614141000036")).toThrow(/needs 14/);
});
