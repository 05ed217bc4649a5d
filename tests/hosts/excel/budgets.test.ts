import { plannedSheet } from "../../../src/apps/pane/price/build";
import { openExcelHost } from "../../../src/hosts/excel/excel-host";
import type { Sheet } from "../../../src/sheets/workbook";
import { demoProducts, demoWorkbook } from "../../support/demo-workbook";
import { emptyBook } from "../../support/excel-wire/book-state";
import { openWire } from "../../support/excel-wire/open-wire";
import type { Sent } from "../../support/excel-wire/wire";
import type { WireBook } from "../../support/excel-wire/wire-book";
import { stateOf, workbookOf } from "../../support/excel-wire/workbook-states";
import { emptySheet } from "../grid/invented-workbook";
import { nothing, priceList } from "./generated-sheets";

/**
 * Requests and bytes as the client library really sends them. A request is what the user waits for; what the library
 * sends afterwards to give its references back is bounded apart.
 */
const kilobyte = 1000;
const megabyte = 1_000_000;

let book: WireBook;
afterEach(() => expect(book.wire.holes).toEqual([]));

const bytesIn = (sent: readonly Sent[]): number =>
  sent.reduce((sum, { bytes }) => sum + bytes, 0);

test("the whole demo book is read in one request, the pane's other questions with it", async () => {
  book = openWire(stateOf(demoWorkbook([], 0)));
  const host = await openExcelHost();
  book.wire.forget();
  const [tables, sheets] = await Promise.all([
    host.readTables(),
    host.sheetNames(),
    host.readNames(),
  ]);
  expect(book.wire.requests).toHaveLength(1);
  expect(tables).toHaveLength(23);
  expect(sheets).toHaveLength(23);
});

test("a costing sheet is built with two requests and 150 kB", async () => {
  book = openWire(stateOf(demoWorkbook([], 0)));
  const host = await openExcelHost();
  const [product = ""] = demoProducts();
  const { change } = plannedSheet({
    tables: await host.readTables(),
    product,
    bottles: 600,
    sheets: await host.sheetNames(),
  });
  await idle();
  book.wire.forget();
  await host.apply(change);
  await idle();
  expect(book.wire.requests).toHaveLength(2);
  expect(bytesIn(book.wire.sent)).toBeLessThan(150 * kilobyte);
  expect(book.wire.sent.length - book.wire.requests.length).toBeLessThan(3);
  expect(book.state.held).toEqual({ calculation: 1, screen: 1 });
});

test("a price list of 500 products takes at most four requests of at most 4 MB", async () => {
  book = openWire(emptyBook());
  const host = await openExcelHost();
  book.wire.forget();
  const sheet = priceList(500);
  await host.apply({ ...nothing, says: "the price list", addSheets: [sheet] });
  expect(book.wire.requests.length).toBeLessThanOrEqual(4);
  for (const { bytes } of book.wire.sent)
    expect(bytes).toBeLessThanOrEqual(4 * megabyte);
  const written = workbookOf(book.state).sheets.at(-1);
  expect(written?.cells).toHaveLength(sheet.cells.length);
  expect(written?.cells.find((c) => c.row === 7 && c.column === 7)?.value).toBe(
    "0042",
  );
});

test("a thousand tote rows are appended with two requests", async () => {
  book = openWire(stateOf(demoWorkbook([], 0)));
  const host = await openExcelHost();
  await idle();
  book.wire.forget();
  await host.apply({
    ...nothing,
    says: "a thousand totes",
    append: [
      {
        table: "ToteShipments",
        rows: Array.from({ length: 1000 }, (_, i) => ({
          "Tote ticket": `T-${i + 1}`,
          "Gross lb": 2900 + (i % 40),
          "Tare lb": 140,
        })),
      },
    ],
  });
  expect(book.wire.requests).toHaveLength(2);
  expect(bytesIn(book.wire.requests)).toBeLessThan(megabyte);
  const table = (await host.readTables()).find(
    ({ name }) => name === "ToteShipments",
  );
  expect(table?.rows).toHaveLength(1044);
  expect(table?.rows.at(-1)?.[0]).toBe("T-1000");
});

test("a value is typed with two requests, and an undo takes three", async () => {
  book = openWire(stateOf(demoWorkbook([], 0)));
  const host = await openExcelHost();
  await idle();
  book.wire.forget();
  await host.setCell({ sheet: "Settings", row: 1, column: 1 }, "Fernkettle");
  expect(book.wire.requests).toHaveLength(2);
  await host.apply({ ...nothing, says: "a sheet", addSheets: [priceList(5)] });
  await idle();
  book.wire.forget();
  expect(await host.undo()).toBe("a sheet");
  expect(book.wire.requests).toHaveLength(3);
});

test("work that does not fit one request says how far it is, and stops when asked with nothing left behind", async () => {
  book = openWire(emptyBook());
  const host = await openExcelHost();
  const addSheets = [longTexts(8000)];
  const stop = new AbortController();
  const told: number[] = [];
  await expect(
    host.apply(
      { ...nothing, says: "the price list", addSheets },
      {
        signal: stop.signal,
        tell: (share) => {
          told.push(share);
          stop.abort();
        },
      },
    ),
  ).rejects.toThrow("You stopped it, and the workbook is as it was");
  expect(told).toHaveLength(1);
  expect(told[0]).toBeGreaterThan(0);
  expect(told[0]).toBeLessThan(1);
  expect(workbookOf(book.state).sheets.map(({ name }) => name)).toEqual([
    "Sheet1",
  ]);
  expect(book.state.xmlParts).toEqual([]);
  for (const { bytes } of book.wire.sent)
    expect(bytes).toBeLessThanOrEqual(4 * megabyte);
});

test("a writer that goes cell by cell sends more than twenty times the bytes for the same sheet", async () => {
  book = openWire(emptyBook());
  const host = await openExcelHost();
  const { tables: _, ...sheet } = priceList(300);
  book.wire.forget();
  await host.apply({
    ...nothing,
    says: "the price list",
    addSheets: [{ ...sheet, tables: [] }],
  });
  const ours = bytesIn(book.wire.requests);
  book.wire.forget();
  await Excel.run(async (context) => {
    const on = context.workbook.worksheets.getItem("Sheet1");
    for (const { row, column, value, formula } of sheet.cells)
      on.getCell(row, column).formulas = [[formula ?? value]];
    await context.sync();
  });
  expect(bytesIn(book.wire.requests) / ours).toBeGreaterThan(20);
});

/** More text than one request holds. */
const longTexts = (rows: number): Sheet => ({
  ...emptySheet("Letters"),
  cells: Array.from({ length: rows }, (_, row) => ({
    row,
    column: 0,
    value: `Lot ${row}: ${"amber and rich, ".repeat(30)}`,
  })),
});

/** The library gives its references back after an answer, without being waited for. */
const idle = (): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, 5));
