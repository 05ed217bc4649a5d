import fc from "fast-check";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { findingText } from "../../src/book/finding";
import {
  pricedProduct,
  priceList,
  worstChannel,
} from "../../src/book/price-list";
import { priceListFindings } from "../../src/book/price-list-findings";
import { costsMoved } from "../../src/book/price-list-moves";
import { readBook } from "../../src/book/read";
import { serialOf } from "../../src/measures/read-date";
import { KG_PER_LB } from "../../src/measures/units";
import { demoFolder, demoTables } from "./csv-folder";

const demo = readBook(demoTables()).book;
const list = priceList(demo);

const changed = (name: string, edit: (text: string) => string) =>
  priceList(
    readBook(bookTablesFromCsv(demoFolder({ [name]: edit })).tables).book,
  );

const withAmber = (price: number) =>
  changed("farm_settings.csv", (text) =>
    text.replace(/("Replacement price, Amber"),2\.6,/, `$1,${price},`),
  );

test("the parts of every product sum to its full cost, and direct and overhead do too", () => {
  for (const { cost } of list.products) {
    const sum = cost.parts.reduce(
      (all, { perBottle }) => all + (perBottle ?? Number.NaN),
      0,
    );
    expect(sum).toBeCloseTo(cost.full.replacement ?? Number.NaN, 9);
    expect(
      (cost.direct.replacement ?? Number.NaN) + (cost.overhead ?? Number.NaN),
    ).toBeCloseTo(cost.full.replacement ?? Number.NaN, 9);
  }
});

test("the cost at replacement is a straight line over bulk while the line stays: its slope is the syrup drawn", () => {
  fc.assert(
    fc.property(fc.integer({ min: 200, max: 350 }), (cents) => {
      const price = cents / 100;
      const moved = withAmber(price);
      for (const { product, bottles, cost } of list.products) {
        const then = pricedProduct(moved, product.product)?.cost;
        const line = cost.choice.chosen?.line;
        if (
          !then ||
          product.syrupKind !== "Amber" ||
          line?.name !== then.choice.chosen?.line.name
        )
          continue;
        const pounds =
          ((cost.syrupPerBottle ?? Number.NaN) + (line?.purge ?? 0) / bottles) /
          KG_PER_LB;
        expect(
          (then.full.replacement ?? 0) - (cost.full.replacement ?? 0),
        ).toBeCloseTo(pounds * (price - 2.6), 8);
      }
    }),
    { numRuns: 8 },
  );
});

test("margin and markup of every price are the two ways to say one profit", () => {
  for (const { channels } of list.products)
    for (const { margin, markup } of channels)
      if (margin !== undefined && markup !== undefined)
        // m = u ÷ (1 + u)
        expect(margin).toBeCloseTo(markup / (1 + markup), 12);
});

test("each product stands worst where least is left against the goal", () => {
  for (const one of list.products) {
    const worst = worstChannel(one);
    for (const { kept, goal } of one.channels)
      if (kept !== undefined)
        expect(kept - goal).toBeGreaterThanOrEqual(
          (worst?.kept ?? Infinity) - (worst?.goal ?? 0),
        );
  }
});

test("another day has that day's prices", () => {
  const spring = priceList(demo, serialOf(2026, 4, 30));
  expect(
    spring.products.flatMap(({ channels }) =>
      channels.filter(({ price }) => price !== undefined),
    ),
  ).toEqual([]);
});

test("a half gallon dearer an ounce than the quart is a kink, named with its channel", () => {
  // Two quarts at 29.99 are 59.98; the half gallon is 54.99 in the demo.
  const kinked = changed("current_prices.csv", (text) =>
    text.replace("J64-DK,Farm counter,54.99", "J64-DK,Farm counter,61.99"),
  );
  const found = priceListFindings(kinked).map(findingText);
  expect(found.filter((text) => text.includes("dearer an ounce"))).toEqual([
    expect.stringMatching(/^Price list, J64-DK in Farm counter: /),
  ]);
  expect(priceListFindings(list).map(findingText).join()).not.toContain(
    "dearer an ounce",
  );
});

test("a missing price of a part is told once for all products it holds up", () => {
  const holes = changed("packaging_price_breaks.csv", (text) =>
    text.replace(/^CAP-CORK,.*\n/gm, ""),
  );
  const found = priceListFindings(holes).filter(
    ({ found: what }) => what === "needs a price for CAP-CORK",
  );
  expect(found).toHaveLength(1);
  expect(found[0]?.where).toContain("B250-OAK");
});

test("every finding names the price list and says what to do", () => {
  for (const { where, todo } of priceListFindings(list)) {
    expect(where).toMatch(/^Price list, /);
    expect(todo).not.toBe("");
  }
});

test("a dearer Amber moves the Amber products only, and says which by more than asked", () => {
  const moves = costsMoved(list, withAmber(2.7), 0.02);
  const of = (code: string) => moves.find(({ product }) => product === code);
  // 0.740789 lb × 0.10 ÷ 4.46811 = 1.66 %; a gallon jug 11.1433 × 0.10 ÷ 46.2801 = 2.41 %.
  expect(of("G250-AM")?.share).toBeCloseTo(0.0166, 4);
  expect(of("J128-AM")?.share).toBeCloseTo(0.0241, 4);
  expect([of("G250-AM")?.isOver, of("J128-AM")?.isOver]).toEqual([false, true]);
  expect(of("J32-DK")?.share).toBe(0);
});
