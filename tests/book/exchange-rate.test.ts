import { bookTablesFromCsv } from "../../src/book/from-csv";
import { worthIn } from "../../src/book/exchange-rate";
import { customersEarned } from "../../src/book/profitability";
import { readBook } from "../../src/book/read";
import { as, type DaySerial } from "../../src/measures/quantity";
import { serialOf } from "../../src/measures/read-date";
import { demoFolder, demoTables } from "./csv-folder";

const on = (month: number, day: number): DaySerial =>
  as<DaySerial>(serialOf(2026, month, day));

const withRates = (rows: string, settings = (text: string) => text) =>
  readBook(
    bookTablesFromCsv(
      demoFolder({
        "exchange_rates.csv": () => `from,cad_per_usd\n${rows}`,
        "farm_settings.csv": settings,
      }),
    ).tables,
  );

test("a book that keeps no rates lacks nothing, and goes by the one in Settings", () => {
  const { book, findings } = readBook(demoTables());
  expect(findings.map(({ where }) => where)).not.toContain(
    "table ExchangeRates",
  );
  // 1.37 Canadian dollars per US dollar, from the farm's settings.
  expect(worthIn(book)("CAD", on(7, 2))).toBeCloseTo(1 / 1.37, 12);
});

test("a dated rate holds from its day until the next, and a blank one is no rate", () => {
  const { book } = withRates("2026-09-01,1.40\n2026-07-01,1.25\n2026-10-01,\n");
  const worth = worthIn(book);
  expect(worth("CAD", on(6, 30))).toBeUndefined();
  expect(worth("CAD", on(7, 1))).toBeCloseTo(0.8, 12);
  expect(worth("CAD", on(8, 31))).toBeCloseTo(0.8, 12);
  expect(worth("CAD", on(9, 1))).toBeCloseTo(1 / 1.4, 12);
  expect(worth("CAD", on(11, 19))).toBeUndefined();
  expect(worth("USD", on(6, 30))).toBe(1);
  expect(worth("EUR", on(9, 1))).toBeUndefined();
});

test("a book kept in Canadian dollars turns US ones the other way", () => {
  const { book } = withRates("2026-07-01,1.25\n", (text) =>
    text.replace("Books money,USD", "Books money,CAD"),
  );
  expect(worthIn(book)("USD", on(7, 2))).toBe(1.25);
  expect(worthIn(book)("CAD", on(7, 2))).toBe(1);
});

describe("what a customer's totes brought in the books' money", () => {
  const canadian = (rows: string) =>
    customersEarned(withRates(rows).book, 2026).find(
      ({ currency }) => currency === "CAD",
    );

  test("each tote goes by the rate of the day it left", () => {
    // Amounts of T-025, T-026 (2 July), T-035, T-036 (10 September) and T-044 (19 November) in the demo's shipments.
    const usd =
      (11_854.28 + 11_785.36) / 1.25 +
      (11_788.94 + 11_772.83) / 1.4 +
      11_822.06 / 1.5;
    const earned = canadian(
      "2026-07-01,1.25\n2026-09-01,1.40\n2026-11-01,1.50\n",
    );
    expect(earned?.inBooksMoney).toBeCloseTo(usd, 6);
    expect(earned?.missing).toEqual([]);
  });

  test("a tote that left on a day without a rate withholds the sum and is named", () => {
    const earned = canadian("2026-07-01,1.25\n2026-09-01,\n");
    expect(earned?.inBooksMoney).toBeUndefined();
    expect(earned?.left).toBeUndefined();
    expect(earned?.missing).toEqual([
      "T-035: a rate on 2026-09-10",
      "T-036: a rate on 2026-09-10",
      "T-044: a rate on 2026-11-19",
    ]);
  });
});

test("a rate that cannot be one is refused with its line", () => {
  expect(() => withRates("2026-07-01,0\n")).toThrow(
    /exchange_rates\.csv line 2, cad_per_usd/,
  );
});
