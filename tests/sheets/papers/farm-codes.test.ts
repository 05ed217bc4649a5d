import { readBook } from "../../../src/book/read";
import { bookTablesFromCsv } from "../../../src/book/from-csv";
import { paperFacts } from "../../../src/sheets/papers/facts";
import { farmCodes, toteCodes } from "../../../src/sheets/papers/tote-codes";
import { demoFolder } from "../../book/csv-folder";

/** The demo farm with more rows of Settings, and ticket T-001 under another number. */
const farm = (settings: readonly string[], ticket = "T-001") =>
  readBook(
    bookTablesFromCsv(
      demoFolder({
        "farm_settings.csv": (text) =>
          `${text.trimEnd()}\n${settings.join("\n")}\n`,
        "tote_shipments.csv": (text) => text.replace(/^T-001,/m, `${ticket},`),
      }),
    ).tables,
  );

// The item's check digit by hand: 9 × 3 + 4 × 3 + 1 = 40, a multiple of ten, so 0.
const numbers = [
  "Company prefix,0400001,,",
  "Tote item number,90400001000000,,",
];

describe("the farm's own numbers on tote labels", () => {
  test("are taken from Settings, zeros in front kept, and what is typed goes before them", () => {
    const { book } = farm(numbers);
    expect(farmCodes(book)).toMatchObject({
      prefix: "0400001",
      item: "90400001000000",
    });
    expect(farmCodes(book, { prefix: "0400002" }).prefix).toBe("0400002");
    const { codes, missing } = toteCodes(
      paperFacts(book, "T-044"),
      farmCodes(book),
    );
    expect(missing).toEqual([]);
    // Extension 0, prefix 0400001, serial 44 in nine digits, check digit.
    expect(codes[0]?.text).toMatch(/^\(00\)00400001000000044\d\(3400\)003047$/);
    expect(codes[1]?.text).toMatch(/^\(01\)90400001000000\(3200\)002912/);
  });

  test("without them the bars are left off and named", () => {
    const { book } = farm([]);
    const { codes, missing } = toteCodes(
      paperFacts(book, "T-044"),
      farmCodes(book),
    );
    expect(codes).toEqual([]);
    expect(missing).toHaveLength(2);
  });

  test("two tickets with the same digits are never one tote", () => {
    const { book } = farm(numbers, "A-44");
    expect(() => toteCodes(paperFacts(book, "T-044"), farmCodes(book))).toThrow(
      "serial: T-044 and A-44 would both be tote 44, and no two totes may bear one number; give T-044 a serial of its own",
    );
    const { codes } = toteCodes(
      paperFacts(book, "T-044"),
      farmCodes(book, { serial: "9044" }),
    );
    expect(codes[0]?.text).toContain("(00)00400001000009044");
  });

  test("a typed serial may not be another tote's either", () => {
    const { book } = farm(numbers);
    expect(() =>
      toteCodes(paperFacts(book, "T-044"), farmCodes(book, { serial: "12" })),
    ).toThrow(/T-044 and T-012 would both be tote 12/);
  });

  test.each([
    [
      "Company prefix,040,,",
      /Company prefix 040: .*a company prefix has 4 to 12/,
    ],
    ["Company prefix,04A0001,,", /holds more than digits/],
    ["Tote item number,90400001000001,,", /not its check digit/],
    ["Tote item number,10400001000004,,", /begins with 1/],
  ])("a setting that cannot be right is a finding: %s", (row, says) => {
    const { findings } = farm([row]);
    expect(
      findings.filter(({ meaning }) => meaning.includes("no label")),
    ).toMatchObject([{ found: expect.stringMatching(says) as string }]);
  });
});

test("a tote above its plate is a finding; the farm's own limit holds for totes that give none", () => {
  const above = (settings: readonly string[]) =>
    farm(settings).findings.find(({ found }) => found.includes("plate"))?.found;
  expect(above([])).toBeUndefined();
  // Source: tote_shipments.csv; only T-009 and T-015 weigh more than 3,089 lb gross.
  expect(above(["Tote plate limit,3089,lb,"])).toBe(
    "above the limit on the tote's plate: T-009 (3,090 lb against 3,089 lb) and T-015 (3,090 lb against 3,089 lb)",
  );
});
