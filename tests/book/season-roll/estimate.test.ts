import type { Book } from "../../../src/book/book";
import { bookTablesFromCsv } from "../../../src/book/from-csv";
import { costingFacts } from "../../../src/book/costing-facts";
import { priceList } from "../../../src/book/price-list";
import { readBook } from "../../../src/book/read";
import { rollSeason } from "../../../src/book/season-roll/roll-season";
import { serialOf } from "../../../src/measures/read-date";
import { bottleCost } from "../../../src/trade/costing/bottle-cost";
import { begunTables, rolledTables } from "../../support/rolled-season";
import { demoFolder, demoTables } from "../csv-folder";

const demo = readBook(demoTables()).book;
const fresh = readBook(rolledTables());
const begun = readBook(begunTables());

const costOf = (book: Book, bottles: number, asOf?: number) =>
  bottleCost(
    costingFacts(book, {
      product: "G250-AM",
      bottles,
      line: "Big line",
      ...(asOf === undefined ? {} : { asOf: asOf as never }),
    }).bottle,
  );
const amountOf = (book: Book, what: string, of?: string) =>
  book.seasonTotals.find((row) => row.what === what && row.of === of)?.amount;

test("the closed season hands on what its bills were shared over", () => {
  // Source: the worked example of tests/trade/costing/overhead-share: 13 lots, 18 runs, 4,623 gallons in 2026.
  expect(amountOf(fresh.book, "runs")).toBe(18);
  expect(amountOf(fresh.book, "lots bought")).toBe(13);
  expect(amountOf(fresh.book, "gallons packed")).toBeCloseTo(4623, 0);
  // Source: bottling_runs.csv: the newest runs of these products.
  expect(amountOf(fresh.book, "bottles of the newest run", "G250-AM")).toBe(
    12_000,
  );
  expect(
    amountOf(fresh.book, "Brix of the newest run", "B250-OAK"),
  ).toBeGreaterThan(66);
  expect(
    amountOf(fresh.book, "Brix of the newest run", "G250-AM"),
  ).toBeUndefined();
  const hours = fresh.book.seasonTotals.filter(
    ({ what }) => what === "hours of a line",
  );
  expect(hours.every(({ amount }) => amount > 0)).toBe(true);
});

test("a book just rolled costs every product as the old one did on its last day, and says what it follows from", () => {
  const old = new Map(
    priceList(demo, serialOf(2026, 12, 31)).products.map((one) => [
      one.product.product,
      one,
    ]),
  );
  const now = priceList(fresh.book).products;
  expect(now.length).toBeGreaterThan(15);
  for (const { product, bottles, cost } of now) {
    const was = old.get(product.product);
    expect(bottles).toBe(was?.bottles);
    expect(cost.overhead).toBeCloseTo(was?.cost.overhead ?? Number.NaN, 9);
    // Aged syrup is priced by the barrels emptied, and of those only what is left goes along.
    if (product.syrupKind !== "Oak")
      expect(cost.full.replacement).toBeCloseTo(
        was?.cost.full.replacement ?? Number.NaN,
        9,
      );
    expect([was?.cost.estimateFrom, cost.estimateFrom]).toEqual([
      undefined,
      2026,
    ]);
  }
  expect(
    fresh.findings.find(({ found }) =>
      found.startsWith("full costs are an estimate from season 2026"),
    )?.meaning,
  ).toContain("18 runs, 4,623 gal");
});

test("each bill goes over to the new season once that has done more of what it is shared by", () => {
  const bottles = 9000;
  const hours = bottles / 2160 + (150 + 75) / 60;
  const gallons = (bottles * 0.252) / 3.785411784;
  // One run against 18; 18 + 13 lots and runs; 4,623 gal against 399; but 64 hours on the big line against 2026's.
  const big = amountOf(fresh.book, "hours of a line", "Big line") ?? 0;
  expect(big).toBeLessThan(64);
  const packed = amountOf(fresh.book, "gallons packed") ?? 0;
  // Source: yearly_overheads.csv, the bills of 2026 by what they are shared by.
  const wanted =
    (7400 + 3200) / 31 +
    (2900 + 2600) / 18 +
    ((16_800 + 6400 + 3600 + 21_600) * gallons) / packed +
    (9500 * hours) / 64;
  const cost = costOf(begun.book, bottles);
  expect((cost.overhead ?? 0) * bottles).toBeCloseTo(wanted, 0);
  expect(cost.estimateFrom).toBe(2026);
  const told = begun.findings.find(({ found }) =>
    found.startsWith("full costs are an estimate"),
  );
  expect(told?.found).not.toContain("Big line depreciation");
  expect(told?.meaning).toContain("so far this season has 1");
});

test("on the season's last day its own figures are all there is", () => {
  const cost = costOf(begun.book, 9000, serialOf(2027, 12, 31));
  expect(cost.estimateFrom).toBeUndefined();
  // Nothing ran on the small lines, and last season no longer stands in for it.
  expect(cost.missing).toEqual(["what shares out Small filler depreciation"]);
  expect(costOf(begun.book, 9000, serialOf(2027, 12, 30)).estimateFrom).toBe(
    2026,
  );
});

test("without last season's runs nothing is estimated: the cost is withheld and what is missing is named", () => {
  const without = demoTables().map((table) =>
    table.name === "Runs"
      ? {
          ...table,
          rows: table.rows.filter(
            ([, date]) => Number(date) < serialOf(2026, 1, 1),
          ),
        }
      : table,
  );
  const rolled = rollSeason(without, 2027);
  const { book } = readBook(rolled.contents);
  expect(amountOf(book, "runs")).toBeUndefined();
  const cost = costOf(book, 9000);
  expect([cost.overhead, cost.full.replacement, cost.estimateFrom]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(cost.missing).toContain("what shares out Insurance and recall cover");
  expect(
    rolled.findings.find(({ where }) => where.startsWith("Overheads"))?.meaning,
  ).toContain("full costs are withheld");
});

test("totals are handed on once: rolled again they stand, and a late run is added to them", () => {
  const again = rollSeason(rolledTables(), 2027);
  expect(again.contents).toEqual(rolledTables());
  const late = begunTables().map((table) =>
    table.name === "Runs"
      ? {
          ...table,
          rows: table.rows.map((row) =>
            row.map((cell) =>
              cell === serialOf(2027, 2, 10) ? serialOf(2026, 12, 29) : cell,
            ),
          ),
        }
      : table,
  );
  const { book } = readBook(rollSeason(late, 2027).contents);
  expect(amountOf(book, "runs")).toBe(19);
  expect(amountOf(book, "bottles of the newest run", "G250-AM")).toBe(6000);
  expect(book.runs).toEqual([]);
});

test("the season after is rolled with its own totals, and a product it did not run keeps its run size", () => {
  const { book } = readBook(rollSeason(begunTables(), 2028).contents);
  expect(new Set(book.seasonTotals.map(({ season }) => season))).toEqual(
    new Set([2027]),
  );
  expect(amountOf(book, "runs")).toBe(1);
  expect(amountOf(book, "hours of a line", "Big line")).toBeCloseTo(64, 9);
  expect(amountOf(book, "bottles of the newest run", "G250-AM")).toBe(6000);
  expect(amountOf(book, "bottles of the newest run", "P250-LOFT")).toBe(1500);
});

test("a book that was never rolled has no such table and lacks nothing by it", () => {
  const { tables } = bookTablesFromCsv(demoFolder());
  const { book, findings } = readBook(tables);
  expect(book.seasonTotals).toEqual([]);
  expect(
    findings.filter(({ where }) => where.includes("SeasonTotals")),
  ).toEqual([]);
});
