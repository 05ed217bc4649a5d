import { readBook } from "../../src/book/read";
import { lotReceived } from "../../src/book/lot-received";
import { totesOf } from "../../src/book/totes";
import { totesFindings } from "../../src/book/totes-findings";
import { balancePounds, lotBalances } from "../../src/book/totes-lots";
import { bookMovements } from "../../src/book/totes-movements";
import { traceOf } from "../../src/book/totes-trace";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { as, type Kilograms } from "../../src/measures/quantity";
import { KG_PER_LB } from "../../src/measures/units";
import { demoFolder, demoTables, replacing } from "./csv-folder";

const { book } = readBook(demoTables());
const totes = totesOf(book);

test("every amount of the register is the ticket's own, to the cent, on four price bases", () => {
  // Source: tote_shipments.csv, the farm's own tickets.
  expect(totes.tickets).toHaveLength(44);
  for (const { row, amount } of totes.tickets)
    expect([row.ticket, amount]).toEqual([row.ticket, row.amount]);
});

test("every invoice is the sum of its totes", () => {
  const sums = new Map<string, number>();
  for (const { row, amount } of totes.tickets) {
    const bill = row.billOfLading ?? "";
    sums.set(bill, (sums.get(bill) ?? 0) + Math.round((amount ?? 0) * 100));
  }
  expect(book.invoices).toHaveLength(26);
  for (const { billOfLading, amount } of book.invoices)
    expect([billOfLading, sums.get(billOfLading)]).toEqual([
      billOfLading,
      Math.round(amount * 100),
    ]);
  expect(totes.toInvoice).toEqual([]);
});

test("the farm's mass balance closes: 266,214 lb bought", () => {
  // Source: the demo farm's own sum, 88,355 bottled + 128,329 in totes + 5,036 into oak + 44,494 in stock.
  const lots = lotBalances(book).filter(({ kind }) => kind === "lot");
  const sum = (of: (lot: (typeof lots)[number]) => number): number =>
    Math.round(lots.reduce((total, lot) => total + of(lot), 0) / KG_PER_LB);
  const used = (what: string) => sum(({ byUse }) => byUse.get(what) ?? 0);
  expect([
    sum(({ received }) => received),
    used("bottled"),
    used("tote sale"),
    used("into oak barrel"),
    sum(({ left }) => left),
  ]).toEqual([266_214, 88_355, 128_329, 5036, 44_494]);
  expect(lots.filter(({ overdraw }) => overdraw)).toEqual([]);
});

test("oak gives back what it took and what is left: every barrel closes", () => {
  // Source: oak_barrels.csv, still_in_barrel_stock_lb.
  const left = lotBalances(book)
    .filter(({ kind }) => kind === "barrel")
    .map((barrel) => [barrel.name, balancePounds(barrel.left)]);
  expect(Object.fromEntries(left)).toMatchObject({
    "OAK-01": 0,
    "OAK-05": 278,
    "OAK-06": 529,
    "OAK-07": 549,
  });
});

test("trace forward and back are inverse: what a lot gave a run, the run got of the lot", () => {
  const lots = book.lots.map(({ lot }) => lot);
  const used = lots.filter((lot) =>
    book.lotUse.some(({ from }) => from === lot),
  );
  expect(used.length).toBeGreaterThan(20);
  const gave = new Map<string, number>();
  for (const lot of used)
    for (const { name, kind, weight } of traceOf(book, lot, "forward")
      .containers)
      if (kind === "run" || kind === "tote") gave.set(`${lot} ${name}`, weight);
  let compared = 0;
  for (const name of [
    ...book.runs.map(({ run }) => run),
    ...book.toteShipments.map(({ ticket }) => ticket),
  ])
    for (const container of traceOf(book, name, "back").containers) {
      if (container.kind !== "lot") continue;
      compared += 1;
      expect(gave.get(`${container.name} ${name}`)).toBeCloseTo(
        container.weight,
        6,
      );
    }
  expect(compared).toBe(gave.size);
});

test("every pound of every lot is in a bottle run, a tote with its buyer, oak, or stock", () => {
  for (const { lot } of book.lots) {
    if (!book.lotUse.some(({ from }) => from === lot)) continue;
    const { total, containers, steps } = traceOf(book, lot, "forward");
    const rests = containers.reduce((sum, { rests: one }) => sum + one, 0);
    expect(rests).toBeCloseTo(total, 6);
    for (const { share } of steps) expect(share).toBeLessThanOrEqual(1 + 1e-9);
  }
});

test("a run and a tote without a draw of their own are traced by their source lots", () => {
  const { tables } = bookTablesFromCsv(
    demoFolder({
      "lot_use.csv": (text) =>
        text
          .split("\n")
          .filter((line) => !/T-044|RUN-01$|,RUN-01,/.test(line))
          .join("\n"),
    }),
  );
  const moves = bookMovements(readBook(tables).book);
  const into = (name: string) =>
    moves
      .filter(({ to }) => to === name)
      .map(({ from, weight }) => [from, Math.round(weight / KG_PER_LB)]);
  expect(into("T-044")).toEqual([
    ["26-04", 1913],
    ["26-05", 999],
  ]);
  expect(into("RUN-01")).toEqual([["25-01", 6272]]);
});

test("swapped weights are withheld and named, and count for no contract", () => {
  const { tables } = bookTablesFromCsv(
    demoFolder({
      "tote_shipments.csv": replacing("BOL-026,3047,135,", "BOL-026,135,3047,"),
    }),
  );
  const swapped = totesOf(readBook(tables).book);
  expect(swapped.tickets.at(-1)).toMatchObject({
    net: undefined,
    amount: undefined,
    needs: ["a gross above the tare"],
  });
  const contract = swapped.contracts.find(
    ({ row }) => row.contract === "C-2603",
  );
  expect(Math.round((contract?.progress.shipped ?? 0) / KG_PER_LB)).toBe(
    14_539 - 2912,
  );
  expect(totesFindings(swapped)[0]?.found).toBe(
    "T-044 needs a gross above the tare",
  );
});

test("a tote that left without an invoice is one to invoice, in its own money", () => {
  const { tables } = bookTablesFromCsv(
    demoFolder({
      "tote_invoices.csv": (text) =>
        text
          .split("\n")
          .filter((line) => !line.startsWith("BOL-026"))
          .join("\n"),
    }),
  );
  expect(totesOf(readBook(tables).book).toInvoice).toMatchObject([
    { bill: "BOL-026", amount: 11_822.06, currency: "CAD", totes: 1 },
  ]);
});

describe("lot 25-01 from its grower", () => {
  const row = book.lots.find(({ lot }) => lot === "25-01");
  if (!row) throw new Error("no lot 25-01");
  const plain = {
    premium: 0,
    deductions: 0,
    tests: as<never>(0),
    filterLoss: as<never>(0.015),
    heelEach: as<Kilograms>(0.6 * KG_PER_LB),
  };

  test("is 10,251 lb and 24,192.36, 2.3761 a lb landed and 2.4157 usable", () => {
    // Source: worked scenario 3 of the demo farm, arithmetic.
    const lot = lotReceived(row, plain);
    expect(balancePounds(lot.net)).toBe(10_251);
    expect(lot.pay).toBe(24_192.36);
    expect(lot.landed).toBeCloseTo(24_357.36 / 10_251, 10);
    expect(lot.usable).toBeCloseTo(2.4157, 4);
    expect([lot.deposits, lot.drumsOut]).toEqual([840, 0]);
  });

  test("premium and deductions count on net pounds, and deductions cannot eat the price", () => {
    expect(
      lotReceived(row, { ...plain, premium: 0.17, deductions: 0.05 }).pay,
    ).toBe(Math.round(10_251 * 2.48 * 100) / 100);
    expect(() => lotReceived(row, { ...plain, deductions: 2.36 })).toThrow(
      /deductions: 2.36 leave nothing of 2.36 a lb/,
    );
  });
});
