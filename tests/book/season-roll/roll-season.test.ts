import type { Contents } from "../../../src/book/contents";
import { readBook } from "../../../src/book/read";
import { balancesOf } from "../../../src/book/season-roll/balances";
import {
  carriedBalances,
  requireSame,
} from "../../../src/book/season-roll/opening";
import {
  openingOf,
  rollSeason,
} from "../../../src/book/season-roll/roll-season";
import { bookTablesFromCsv } from "../../../src/book/from-csv";
import { isoDate, serialOf } from "../../../src/measures/read-date";
import { KG_PER_LB } from "../../../src/measures/units";
import { demoFolder, demoTables, replacing } from "../csv-folder";

const roll = rollSeason(demoTables(), 2027);
const { book: next } = readBook(roll.contents);
const amounts = (what: string): Readonly<Record<string, number>> =>
  Object.fromEntries(
    roll.closing
      .filter((one) => one.what === what)
      .map(({ name, unit, amount }) => [`${name} ${unit}`, amount]),
  );
const rolledWith = (changes: Parameters<typeof demoFolder>[0], season = 2027) =>
  rollSeason(bookTablesFromCsv(demoFolder(changes)).tables, season);

test("the season's closing figures are the farm's own", () => {
  // Source: stock_count.csv, the book weights the farm wrote down itself.
  expect(amounts("Left of lot")).toEqual({
    "26-03 lb": 4681,
    "26-05 lb": 6726,
    "26-06 lb": 12780,
    "26-08 lb": 5128,
    "26-10 lb": 9402,
    "26-13 lb": 5777,
  });
  // Source: oak_barrels.csv, its column still_in_barrel_stock_lb.
  expect(amounts("Left in barrel")).toEqual({
    "OAK-05 lb": 278,
    "OAK-06 lb": 529,
    "OAK-07 lb": 549,
    "OAK-08 lb": 309,
    "OAK-09 lb": 554,
    "OAK-10 lb": 551,
  });
  // Source: by hand from tote_invoices.csv less tote_payments.csv; Pinwhistle's 85 over-paid stays apart.
  expect(amounts("Owed by")).toEqual({
    "Oatloft Bakery USD": 17833.86,
    "Pinwhistle Creamery USD": 18030.38,
    "Nettlecombe Sauces USD": 10017.78,
    "Larkspindle Foods (Canada) CAD": 11822.06,
  });
  expect(amounts("Paid too much by")).toEqual({
    "Pinwhistle Creamery USD": 85,
  });
  expect(Object.keys(amounts("Left to send on contract"))).toEqual([
    "C-2601 lb",
    "C-2602 lb",
    "C-2603 lb",
    "C-2604 lb",
  ]);
  expect(amounts("Part on hand")["BTL-250 pieces"]).toBe(6048);
});

test("every opening equals its closing", () => {
  const balances = openingOf(roll, roll.contents);
  expect(balances.length).toBeGreaterThan(40);
  for (const { closing, opening } of balances)
    expect(opening).toBeCloseTo(closing, 5);
});

test("a lot with something left keeps its row and gets one draw for all before", () => {
  const lot = next.lots.find((row) => row.lot === "26-08");
  expect([lot?.pricePerPound, lot?.grower, lot?.inboundFreight]).toEqual([
    2.61,
    "G01",
    335,
  ]);
  const before = next.lotUse.filter(({ to }) => to === "used before 2027");
  const drawn = before.find(({ from }) => from === "26-03");
  expect(drawn && isoDate(drawn.date)).toBe("2026-12-31");
  // 10,406 lb came in, 4,681 lb are left.
  expect((drawn?.pounds ?? 0) / KG_PER_LB).toBeCloseTo(10406 - 4681, 6);
  expect(new Set(before.map(({ from }) => from)).size).toBe(before.length);
});

test("used-up lots are dropped unless a tote or barrel that is carried came of them", () => {
  const lots = next.lots.map(({ lot }) => lot);
  expect(lots).not.toContain("25-01");
  // 26-11 is used up, in totes of contract C-2601, which runs until 2027-02-28.
  expect(lots).toContain("26-11");
  for (const { from } of next.lotUse)
    expect([...lots, ...next.oakBarrels.map(({ barrel }) => barrel)]).toContain(
      from,
    );
  const filled = next.lotUse.filter(({ to }) => to === "OAK-07");
  expect(filled.length).toBeGreaterThan(0);
});

test("a contract is carried whole or not at all", () => {
  const contracts = next.toteContracts.map(({ contract }) => contract);
  // C-2501 and C-2502 are over and paid, but tote_shipments.csv has no return of T-004, T-009, T-014 and T-019.
  expect(contracts).toHaveLength(7);
  const { book } = readBook(demoTables());
  for (const contract of contracts)
    expect(
      next.toteShipments.filter((row) => row.contract === contract),
    ).toHaveLength(
      book.toteShipments.filter((row) => row.contract === contract).length,
    );
  const bills = new Set(next.invoices.map(({ billOfLading }) => billOfLading));
  for (const { billOfLading } of next.toteShipments)
    expect(bills).toContain(billOfLading);
});

test("a contract that is over, paid and has its totes back stays in last season's book", () => {
  const { contents, findings, closing } = rolledWith({
    "tote_shipments.csv": (text) =>
      text.replace(/^(T-(?:004|009|014|019),.*,120,),/gm, "$12026-03-01,"),
  });
  const { book } = readBook(contents);
  // BOL-010 of C-2503 is short by 210, so it comes along.
  expect(book.toteContracts.map(({ contract }) => contract)).toEqual([
    "C-2503",
    "C-2601",
    "C-2602",
    "C-2603",
    "C-2604",
  ]);
  expect(book.payments.map(({ receipt }) => receipt)).not.toContain("PAY-001");
  expect(book.lots.map(({ lot }) => lot)).not.toContain("25-08");
  expect(closing).toContainEqual({
    what: "Totes out with buyers",
    name: "all",
    unit: "totes",
    amount:
      next.toteShipments.filter(
        ({ returnedOn, deposit }) => returnedOn === undefined && deposit,
      ).length - 4,
  });
  const unsent = findings.find(({ found }) => found.includes("not sent"));
  expect(unsent?.found).toMatch(/C-2501 \([\d,]+ lb\)/);
});

test("prices keep their dates, overheads stand as an estimate, last season's runs stay behind", () => {
  const { book } = readBook(demoTables());
  const priced = ({
    product,
    channel,
    price,
    validFrom,
  }: (typeof book.prices)[number]) => [product, channel, price, validFrom];
  expect(next.prices.map(priced)).toEqual(book.prices.map(priced));
  const perYear = (of: typeof book, season: number) =>
    of.overheads
      .filter((row) => row.season === season)
      .map(({ item, perYear: sum }) => [item, sum]);
  expect(perYear(next, 2027)).toEqual(perYear(book, 2026));
  expect(perYear(next, 2025)).toEqual([]);
  expect([next.runs, next.fillChecks, next.stockCount]).toEqual([[], [], []]);
  expect(
    roll.findings.some(({ where }) => where === "Overheads, season 2027"),
  ).toBe(true);
});

test("the same season again gives the same book", () => {
  const again = rollSeason(roll.contents, 2027);
  expect(again.contents).toEqual(roll.contents);
  expect(again.closing).toEqual(roll.closing);
});

test("what the new season has entered already is kept when the season is rolled again", () => {
  const contents = roll.contents.map((table): Contents =>
    table.name === "LotUse"
      ? {
          ...table,
          rows: [
            ...table.rows,
            [serialOf(2027, 1, 12), "26-08", "lost or adjusted", "", 28],
          ],
        }
      : table,
  );
  const again = rollSeason(contents, 2027);
  expect(again.contents).toEqual(contents);
  expect(
    balancesOf(readBook(again.contents).book, serialOf(2027, 1, 12)).find(
      ({ name }) => name === "26-08",
    )?.amount,
  ).toBe(5100);
});

test("a tote nobody has billed, money set against nothing and a row nobody can read are all carried", () => {
  const odd = rolledWith({
    "tote_invoices.csv": (text) =>
      text
        .split("\n")
        .filter((line) => !line.startsWith("BOL-006,"))
        .join("\n"),
    "tote_payments.csv": replacing(
      "PAY-005,2025-10-03,Nettlecombe Sauces,BOL-005",
      "PAY-005,2025-10-03,Nettlecombe Sauces,",
    ),
  });
  const book = readBook(odd.contents).book;
  expect(book.toteContracts.map(({ contract }) => contract)).toContain(
    "C-2501",
  );
  expect(odd.closing).toContainEqual({
    what: "Sent and not invoiced",
    name: "Oatloft Bakery, BOL-006",
    unit: "USD",
    amount: 17160.84,
  });
  expect(book.payments.map(({ receipt }) => receipt)).toContain("PAY-005");
  const unread = demoTables().map((table): Contents =>
    table.name === "Runs"
      ? { ...table, rows: [...table.rows, ["RUN-99", "someday", "G250-AM"]] }
      : table,
  );
  const { contents, findings } = rollSeason(unread, 2027);
  expect(
    contents.find(({ name }) => name === "Runs")?.rows.map(([run]) => run),
  ).toEqual(["RUN-99"]);
  expect(findings.some(({ found }) => found.includes("cannot be used"))).toBe(
    true,
  );
});

test("a book that would open with something else is refused by name", () => {
  const tampered = roll.contents.map((table): Contents =>
    table.name === "LotUse" ? { ...table, rows: table.rows.slice(1) } : table,
  );
  expect(() => openingOf(roll, tampered)).toThrow(
    /Left of lot 25-04, closing 0 lb and opening [\d,]+ lb\. Nothing was written\./,
  );
  const owed = { what: "Owed by", name: "A", unit: "USD", amount: 10 };
  expect(() =>
    requireSame(carriedBalances([owed], [{ ...owed, unit: "CAD" }])),
  ).toThrow(
    /Owed by A, closing 10 USD and opening 0 USD and Owed by A, closing 0 CAD/,
  );
  expect(() =>
    requireSame(carriedBalances([owed], [{ ...owed, amount: Number.NaN }])),
  ).toThrow("Nothing was written");
});

test("only the season that follows can be opened", () => {
  expect(() => rollSeason(demoTables(), 2029)).toThrow(
    "the next season is 2027",
  );
  expect(() => rollSeason(demoTables(), 2025)).toThrow(
    "the book has entries of 2026 already",
  );
});
