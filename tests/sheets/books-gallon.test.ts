import { gridFunctions } from "../../src/apps/grid-functions";
import type { Contents } from "../../src/book/contents";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { newestDay } from "../../src/book/newest-day";
import { readBook } from "../../src/book/read";
import { setting } from "../../src/book/setting";
import { toteTickets } from "../../src/book/tote-tickets";
import { calculate } from "../../src/hosts/grid/calculate";
import { as, type DaySerial } from "../../src/measures/quantity";
import { LITRES_PER_GALLON } from "../../src/measures/units";
import { inBooksGallon } from "../../src/sheets/books-gallon";
import { farmBook } from "../../src/sheets/farm-book";
import type { SheetDescription } from "../../src/sheets/model";
import { place } from "../../src/sheets/place";
import { toteFacts } from "../../src/sheets/totes/facts";
import { describeRegister } from "../../src/sheets/totes/register-sheet";
import { ticketsBlock } from "../../src/sheets/totes/tickets-block";
import { kettleBlock } from "../../src/sheets/run-plan/run-blocks";
import { demoFolder, demoTables } from "../book/csv-folder";

const canadian = (gallon?: string): readonly Contents[] =>
  bookTablesFromCsv(
    demoFolder({
      "farm_settings.csv": (text) =>
        `${text.trimEnd()}\nCountry,Canada,,\n${gallon === undefined ? "" : `Gallon,${gallon},,\n`}`,
    }),
  ).tables;

/** Only what depends on the gallon, so that it is worked out in seconds. */
function gallonsOnly(contents: readonly Contents[]): SheetDescription {
  const facts = toteFacts(contents);
  const day = newestDay(readBook(contents).book) ?? 0;
  const tickets = ticketsBlock(facts);
  if (tickets.kind !== "table" || kettleBlock.kind !== "lines")
    throw new Error("the blocks are of another kind");
  const nothing = (): string => "0";
  const inputs = describeRegister(facts, {
    contracts: nothing,
    owed: nothing,
  }).blocks.find(
    (block) =>
      block.kind === "lines" &&
      block.lines.some(({ name }) => name === "gallon_digits"),
  );
  if (inputs?.kind !== "lines") throw new Error("the register has no inputs");
  return {
    name: "Gallons",
    widths: [],
    frozenRows: 0,
    blocks: [
      {
        kind: "lines",
        title: "",
        lines: [
          ...inputs.lines.map((line) =>
            line.name === "as_of" ? { ...line, content: day } : line,
          ),
          ...kettleBlock.lines.slice(0, 2),
        ],
      },
      { ...tickets, rows: 45 },
    ],
  };
}

async function worked(contents: readonly Contents[]) {
  const { sheet, places } = place(
    inBooksGallon(gallonsOnly(contents), contents),
    { portable: false },
  );
  const book = farmBook(contents);
  const needed = ["Settings", "Tote shipments", "Tote contracts", "Invoices"];
  const { workbook } = await calculate(
    {
      ...book,
      sheets: [
        sheet,
        ...book.sheets.filter(({ name }) => [...needed, "Lots"].includes(name)),
      ],
    },
    gridFunctions,
  );
  return (name: string, index = 0): unknown => {
    const area = places.get(name);
    return (
      workbook.sheets[0]?.cells.find(
        ({ row, column }) =>
          row === (area?.row ?? -1) + index && column === area?.column,
      )?.value ?? ""
    );
  };
}

test("the sheets of a book that keeps the US gallon are not touched", () => {
  const contents = demoTables();
  const description = gallonsOnly(contents);
  expect(inBooksGallon(description, contents)).toBe(description);
});

test.each(["imperial", "US", undefined])(
  "the sheets of a book for Canada count the gallon it says: %s",
  async (gallon) => {
    const contents = canadian(gallon);
    const { book } = readBook(contents);
    const at = await worked(contents);
    const hot = setting(book, "Kettle working fill");
    if (hot === undefined)
      expect(at("kettle_hot")).toEqual({ error: "#VALUE!" });
    else expect(at("kettle_hot")).toBeCloseTo(hot / LITRES_PER_GALLON, 9);
    const tickets = toteTickets(
      book,
      as<DaySerial>(newestDay(book) ?? Number.NaN),
    );
    const perGallon = tickets.flatMap(({ basis }, i) =>
      basis === "per gal" ? [i] : [],
    );
    expect(perGallon.length).toBeGreaterThan(3);
    for (const i of perGallon) {
      const amount = tickets[i]?.amount ?? "";
      expect(at("tickets.amount", i)).toBe(amount);
      const needs = /which gallon its price is for/;
      if (amount === "") expect(at("tickets.needs", i)).toMatch(needs);
      else expect(at("tickets.needs", i)).not.toMatch(needs);
    }
  },
  120_000,
);
