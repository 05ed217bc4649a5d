import { postable } from "../../../../src/apps/pane/totes/paste";
import { postTickets } from "../../../../src/apps/pane/totes/post";
import { readBook } from "../../../../src/book/read";
import { checkTickets } from "../../../../src/book/tickets/check-tickets";
import { ticketFacts } from "../../../../src/book/tickets/ticket-facts";
import { openExcelHost } from "../../../../src/hosts/excel/excel-host";
import type { Host } from "../../../../src/hosts/host";
import { farmBook } from "../../../../src/sheets/farm-book";
import type { Workbook } from "../../../../src/sheets/workbook";
import { demoTables } from "../../../book/csv-folder";
import { hostKinds } from "../../../hosts/contract/three-hosts";

const wanted = new Set([
  "ToteContracts",
  "ToteShipments",
  "Lots",
  "LotUse",
  "Invoices",
  "Payments",
  "Settings",
]);
const demo = farmBook(demoTables());
/** The tables that posting looks at and writes to; the rest of the farm's book would only take time. */
const book: Workbook = {
  ...demo,
  names: [],
  sheets: demo.sheets
    .filter(({ tables }) => tables.some(({ name }) => wanted.has(name)))
    .map((sheet) => ({ ...sheet, validations: [], charts: [] })),
};
const without = (table: string): Workbook => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...sheet,
    tables: sheet.tables.filter(({ name }) => name !== table),
  })),
});

const tables = demoTables();
const ready = postable(
  checkTickets(
    [
      "ticket,date,gross,tare,brix,lot",
      "T-960,2026-11-20,3044,132,66.6,26-06",
    ].join("\n"),
    ticketFacts(readBook(tables).book, tables, { contract: "C-2604" }),
  ),
  new Set(),
).map((line) => line.ready);

const shipped = async (host: Host): Promise<readonly string[]> =>
  readBook(await host.readTables())
    .book.toteShipments.map(({ ticket }) => ticket)
    .slice(-2);
const said = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => "done",
    (problem: unknown) => (problem as Error).message,
  );
const cellsOf = ({ sheets }: Workbook): unknown =>
  sheets.map(({ name, cells, tables: held }) => [
    name,
    cells.length,
    held.map(({ area }) => area),
  ]);

describe.each(hostKinds.map((kind) => [kind.name, kind] as const))(
  "in %s",
  (name, kind) => {
    test("a ticket that another pane has posted meanwhile goes in once, and the second pane is told", async () => {
      const opened = await kind.open(book, []);
      try {
        // In Excel a second pane is a host of its own on the same workbook.
        const other = name === "excel" ? await openExcelHost() : opened.host;
        expect(ready).toHaveLength(1);
        await postTickets(opened.host, ready);
        expect(await shipped(opened.host)).toEqual(["T-044", "T-960"]);
        const before = cellsOf(await opened.workbook());
        expect(await said(postTickets(other, ready))).toContain(
          "T-960 was posted meanwhile, so nothing was written",
        );
        expect(cellsOf(await opened.workbook())).toEqual(before);
      } finally {
        opened.close();
      }
    }, 120_000);

    test.each(["ToteShipments", "LotUse"])(
      "the table %s deleted behind our back is said, and nothing is half-written",
      async (table) => {
        const opened = await kind.open(without(table), []);
        try {
          const before = cellsOf(await opened.workbook());
          expect(await said(postTickets(opened.host, ready))).toContain(
            `The table ${table} is no longer in this workbook, so nothing was written`,
          );
          expect(cellsOf(await opened.workbook())).toEqual(before);
        } finally {
          opened.close();
        }
      },
      120_000,
    );
  },
);
