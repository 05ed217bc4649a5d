import { gridFunctions } from "../../src/apps/grid-functions";
import { newestDay as inThePane } from "../../src/apps/pane/new-product/choices";
import type { CellContent } from "../../src/book/contents";
import {
  newestDay,
  newestDayFormula,
  newestDayIn,
} from "../../src/book/newest-day";
import { costingFacts } from "../../src/book/costing-facts";
import { readBook } from "../../src/book/read";
import { openHeadless } from "../../src/hosts/grid/open-headless";
import { as } from "../../src/measures/quantity";
import { isoDate, serialOf } from "../../src/measures/read-date";
import { demoTables } from "../book/csv-folder";
import { emptySheet } from "../hosts/grid/invented-workbook";
import { demoWorkbook } from "../support/demo-workbook";

// The count of farm_settings.csv is of 2026-11-20; lot_use.csv and tote_shipments.csv end the day before.
const counted = serialOf(2026, 11, 20);

/** Type a date into the first row under a heading of a table; what counts as having happened moves the newest day. */
const typed: readonly (readonly [
  table: string,
  heading: string,
  day: number,
  newest: number,
])[] = [
  ["Lots", "Received", counted + 1, counted + 1],
  ["LotUse", "Date", counted + 2, counted + 2],
  ["BulkPrices", "Valid from", counted + 3, counted + 3],
  ["Runs", "Date", counted + 4, counted + 4],
  ["OakBarrels", "Filled on", counted + 5, counted + 5],
  ["OakBarrels", "Emptied on", counted + 6, counted + 6],
  ["ToteShipments", "Shipped", counted + 7, counted + 7],
  ["Invoices", "Invoice date", counted + 8, counted + 8],
  ["Payments", "Paid on", counted + 9, counted + 9],
  // A promise, a bill not yet due and a price list that starts later have not happened.
  ["ToteContracts", "End", counted + 400, counted + 9],
  ["Invoices", "Due date", counted + 400, counted + 9],
  ["Prices", "Valid from", counted + 400, counted + 9],
];

test("code, pane and sheet agree on the newest day, whatever table it stands in", async () => {
  const contents = demoTables();
  const book = demoWorkbook(["P250-LOFT"], 1200);
  const host = await openHeadless(
    {
      ...book,
      sheets: [
        ...book.sheets,
        {
          ...emptySheet("Day"),
          cells: [
            { row: 0, column: 0, formula: `=${newestDayFormula(contents)}` },
          ],
        },
      ],
    },
    gridFunctions,
  );
  try {
    const days = async (): Promise<readonly unknown[]> => {
      const tables = await host.readTables();
      const read = readBook(tables).book;
      return [
        newestDay(read),
        newestDayIn(tables),
        costingFacts(read, { product: "P250-LOFT", bottles: 1200 }).asOf,
        (await host.readCell({ sheet: "Day", row: 0, column: 0 })).value,
        inThePane(tables),
      ];
    };
    const all = (day: number): readonly CellContent[] => [
      ...Array<number>(4).fill(day),
      isoDate(as(day)),
    ];
    expect(await days()).toEqual(all(counted));
    for (const [name, heading, day, newest] of typed) {
      const table = (await host.readTables()).find((t) => t.name === name);
      const column = table?.headings.indexOf(heading) ?? -1;
      if (!table || column < 0) throw new Error(`no ${heading} in ${name}`);
      await host.setCell(
        {
          sheet: table.sheet,
          row: table.row + 1,
          column: table.column + column,
        },
        day,
      );
      expect([name, heading, ...(await days())]).toEqual([
        name,
        heading,
        ...all(newest),
      ]);
    }
  } finally {
    host.dispose();
  }
}, 120_000);

test("a book without any date has no newest day, and its formula names only the tables that are there", () => {
  expect(newestDay(readBook([]).book)).toBeUndefined();
  expect(newestDayIn([])).toBeUndefined();
  expect(newestDayFormula([])).toBe(
    'MAX(SUMIFS(Settings[Value],Settings[Setting],"Count date"))',
  );
});
