import { bookTablesFromCsv } from "../../src/book/from-csv";
import { gallonIn, gallonOf } from "../../src/book/gallon";
import { ledgerGallon } from "../../src/book/ledger/ledger-gallon";
import { proposeLedger } from "../../src/book/ledger/propose";
import { readLedger } from "../../src/book/ledger/read-ledger";
import { readBook } from "../../src/book/read";
import { setting } from "../../src/book/setting";
import { toteTickets } from "../../src/book/tote-tickets";
import { bestTotePrice } from "../../src/book/tote-price";
import type { Gallon } from "../../src/measures/gallon";
import { as, type Brix, type DaySerial } from "../../src/measures/quantity";
import { serialOf } from "../../src/measures/read-date";
import { demoFolder, demoTables } from "./csv-folder";

const inCanada =
  (gallon?: string) =>
  (text: string): string =>
    `${text.trimEnd()}\nCountry,Canada,,\n${gallon === undefined ? "" : `Gallon,${gallon},,\n`}`;

const demoIn = (gallon?: string) =>
  bookTablesFromCsv(demoFolder({ "farm_settings.csv": inCanada(gallon) }))
    .tables;

const day = as<DaySerial>(serialOf(2026, 11, 25));
const us = readBook(demoTables());
const unsaid = readBook(demoIn());
const imperial = readBook(demoIn("imperial"));
const american = readBook(demoIn("US"));

/** 4.54609 L over 3.785411784 L, as the definitions have them. */
const RATIO = 4.54609 / 3.785411784;

test("a book says its gallon by Gallon, else by its country", () => {
  expect(gallonIn(demoTables())).toBe("US");
  expect(gallonIn(demoIn())).toBe("unsaid");
  expect(gallonIn(demoIn("Imperial"))).toBe("imperial");
  expect(gallonOf(american.book)).toBe("US");
});

test("a book for Canada asks which gallon it means once, whatever waits for it", () => {
  const asked = unsaid.findings.filter(({ meaning }) =>
    /imperial/.test(meaning),
  );
  expect(asked).toHaveLength(1);
  expect(asked[0]).toMatchObject({
    where: "farm_settings.csv line 12, value (120)",
    todo: 'enter US or imperial as the setting "Gallon", once for the whole book',
  });
  // The other volume, and every contract priced by the gallon.
  expect(asked[0]?.found).toContain("farm_settings.csv line 13");
  expect(asked[0]?.found).toContain('("USD per gallon")');
  expect(setting(unsaid.book, "Kettle working fill")).toBeUndefined();
});

test("nothing else is asked, and in a book that says so nothing is", () => {
  const others = unsaid.findings.filter(
    ({ meaning }) => !/imperial/.test(meaning),
  );
  expect(others).toEqual(us.findings);
  expect(imperial.findings).toEqual(us.findings);
  expect(american.findings).toEqual(us.findings);
});

test("a bare gallon is the one the book says", () => {
  expect(setting(us.book, "Kettle working fill")).toBeCloseTo(
    120 * 3.785411784,
    9,
  );
  expect(setting(american.book, "Kettle working fill")).toBe(
    setting(us.book, "Kettle working fill"),
  );
  expect(setting(imperial.book, "Kettle working fill")).toBeCloseTo(
    120 * 4.54609,
    9,
  );
});

test("a price for a gallon is for the book's gallon, and none until it is said", () => {
  const priced = (reading: typeof us) =>
    toteTickets(reading.book, day).filter(({ basis }) => basis === "per gal");
  expect(priced(us).length).toBeGreaterThan(3);
  for (const [i, ticket] of priced(imperial).entries()) {
    const own = priced(us)[i];
    expect(ticket.quantity).toBeCloseTo((own?.quantity ?? 0) / RATIO, 9);
    expect(ticket.amount).toBeCloseTo((own?.amount ?? 0) / RATIO, 1);
    expect(ticket.needs).toEqual(own?.needs);
  }
  for (const ticket of priced(unsaid)) {
    expect(ticket.amount).toBeUndefined();
    expect(ticket.needs.join()).toContain("which gallon its price is for");
  }
  expect(toteTickets(american.book, day)).toEqual(toteTickets(us.book, day));
});

test("the best price of a pound leaves a price for an unnamed gallon out", () => {
  const only = (reading: typeof us) => ({
    ...reading.book,
    toteShipments: [],
    toteContracts: reading.book.toteContracts
      .filter(({ basis }) => basis === "USD per gallon")
      .map((row) => ({ ...row, gradesAllowed: undefined, end: day })),
  });
  const price = (reading: typeof us) =>
    bestTotePrice(only(reading), "Amber", as<Brix>(66), day)?.perPound;
  expect(price(us)).toBeGreaterThan(1);
  expect(price(imperial)).toBeCloseTo((price(us) ?? 0) / RATIO, 4);
  expect(price(unsaid)).toBeUndefined();
});

test("a volume typed with its unit is refused with file, line and column until the gallon is said", () => {
  const barrels = (text: string): string => text.replace(",53,", ",53 gal,");
  const folder = (gallon?: string) =>
    demoFolder({
      "farm_settings.csv": inCanada(gallon),
      "oak_barrels.csv": barrels,
    });
  expect(() => bookTablesFromCsv(folder())).toThrow(
    /^oak_barrels\.csv line \d+, size_gal: "53 gal" may be US gallons \(3\.785411784 L\) or imperial gallons \(4\.54609 L\); enter US or imperial as the setting "Gallon", once for the whole book$/,
  );
  const { book } = readBook(bookTablesFromCsv(folder("imperial")).tables);
  expect(book.oakBarrels.map(({ size }) => size)).toContainEqual(
    expect.closeTo(53 * 4.54609, 8),
  );
});

test("what was read of a text says which gallon the column is in", () => {
  const { findings } = bookTablesFromCsv(
    demoFolder({
      "farm_settings.csv": inCanada("imperial"),
      "oak_barrels.csv": (text) => text.replace(",53,", ",53 gal,"),
    }),
  );
  // 53 × 4.54609 / 3.785411784 = 63.6503…
  expect(findings.map(({ meaning }) => meaning).join()).toMatch(
    /understood as 63\.65\d+ US gal,/,
  );
});

describe("a ledger somebody keeps", () => {
  const ledger = (heading: string, cell: string | number = 36) => [
    ["Ticket", "Date", "Gross lb", "Tare lb", "Net lb", "Brix", heading],
    ["T-1", 46000, 3044, 132, 2912, 66.4, cell],
    ["T-2", 46001, 3040, 130, 2910, 66.2, cell],
  ];
  const tickets = (
    heading: string,
    book: Gallon,
    cell?: string | number,
  ): ReturnType<typeof readLedger> => {
    const cells = ledger(heading, cell);
    const proposal = proposeLedger(cells);
    return readLedger(cells, proposal.rows, {
      columns: proposal.columns,
      weight: proposal.understood.weight.is,
      basis: proposal.understood.basis?.is,
      currency: undefined,
      dates: undefined,
      gallon: ledgerGallon(proposal, book),
    });
  };
  const questions = (all: ReturnType<typeof readLedger>): readonly string[] =>
    all.flatMap(({ unread }) => unread.map(({ says }) => says));

  test.each<[string, Gallon, string | number, number]>([
    ["Price $/gal", "US", 36, 1],
    ["Price $/gal", "imperial", 36, RATIO],
    ["Price $/US gal", "unsaid", 36, 1],
    ["Price $/imp gal", "imperial", 36, RATIO],
    ["Price", "unsaid", "36 per US gal", 1],
  ])("headed %j in a book whose gallon is %s", (heading, book, cell, each) => {
    for (const ticket of tickets(heading, book, cell)) {
      expect(ticket.basis).toBe("per gal");
      expect(ticket.gallonsEach ?? 1).toBe(each);
    }
  });

  test.each<[string, Gallon, string | number]>([
    ["Price $/gal", "unsaid", 36],
    ["Price $/imp gal", "US", 36],
    ["Price", "unsaid", "36 per gal"],
  ])("headed %j is asked about once where it is %s", (heading, book, cell) => {
    const all = tickets(heading, book, cell);
    expect(questions(all)).toEqual([
      expect.stringMatching(/may be US gallons .*the setting "Gallon"/),
    ]);
    expect(all.map(({ basis }) => basis)).toEqual([undefined, undefined]);
  });
});
