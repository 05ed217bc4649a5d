import fc from "fast-check";
import { openExcelHost } from "../../../src/hosts/excel/excel-host";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";
import { emptyBook } from "../../support/excel-wire/book-state";
import { openWire } from "../../support/excel-wire/open-wire";
import type { WireBook } from "../../support/excel-wire/wire-book";
import {
  resultsOf,
  workbookOf,
} from "../../support/excel-wire/workbook-states";
import { comparable } from "../contract/three-hosts";
import { anyWorkbook } from "../file/any-workbook";
import { emptySheet, richWorkbook } from "../grid/invented-workbook";
import { nothing } from "./generated-sheets";

let book: WireBook;
afterEach(() => expect(book.wire.holes).toEqual([]));

async function added(
  sheets: readonly Sheet[],
  names: Workbook["names"] = [],
  api = "1.20",
): Promise<readonly Sheet[]> {
  book = openWire(emptyBook(resultsOf({ title: "", sheets, names })), { api });
  const host = await openExcelHost();
  await host.apply({ ...nothing, says: "sheets", addSheets: sheets, names });
  return workbookOf(book.state).sheets.slice(1);
}

const comparableSheets = (sheets: readonly Sheet[]): unknown =>
  comparable({ title: "", sheets, names: [] }, { results: true });

/** What Excel can hold. The client library pinned here knows no notes yet, so they are left out. */
const plain: readonly Sheet[] = richWorkbook.sheets.map((sheet) => ({
  ...sheet,
  cells: sheet.cells.map(({ note: _, ...cell }) => cell),
  validations: sheet.validations.map((validation) =>
    validation.rule.kind === "list"
      ? { ...validation, rule: { kind: "list", choices: ["Amber", "Dark"] } }
      : validation,
  ),
}));

test("a sheet arrives whole: values, formulas, looks, edges, rules, tables, sizes and names", async () => {
  const written = await added(plain, richWorkbook.names);
  expect(comparableSheets(written)).toEqual(comparableSheets(plain));
  expect(workbookOf(book.state).names).toEqual(richWorkbook.names);
});

test("any sheet the model can say arrives as it is, rules that overlap apart", async () => {
  await fc.assert(
    fc.asyncProperty(anyWorkbook, async ({ sheets }) => {
      const given = sheets.map((sheet) => ({
        ...sheet,
        cells: sheet.cells.map(({ note: _, ...cell }) => cell),
        validations: sheet.validations.slice(0, 1),
      }));
      const written = await added(given);
      expect(comparableSheets(written)).toEqual(comparableSheets(given));
      expect(book.wire.holes).toEqual([]);
    }),
    { numRuns: 150 },
  );
});

test.each([
  "0042",
  "1/2",
  "3-4",
  "2026-11-25",
  "5 Mar",
  "1E5",
  "12%",
  "$5",
  "7:30",
  "=1+1",
  "+SUM",
  "-A1",
  "@home",
  "'quoted",
  "#N/A",
  "TRUE",
  "1,5",
  "1.234,5",
])("the text %s stays text, in every country's Excel", async (text) => {
  const [sheet] = await added([
    { ...emptySheet("Work"), cells: [{ row: 0, column: 0, value: text }] },
  ]);
  expect(sheet?.cells).toEqual([{ row: 0, column: 0, value: text }]);
});

test("an error that was stored stays an error", async () => {
  const cells = [{ row: 0, column: 0, value: { error: "#N/A" } }];
  const [sheet] = await added([{ ...emptySheet("Work"), cells }]);
  expect(sheet?.cells).toEqual(cells);
});

test("rows of the same formula travel once and are copied down, those that only look the same do not", async () => {
  const cells = Array.from({ length: 40 }, (_, row) => [
    {
      row,
      column: 0,
      formula: `=IF($C${row + 1}="","",SUMPRODUCT(($C${row + 1}=$C$1:$C$40)*D${row + 1}))`,
      value: 1,
    },
    {
      row,
      column: 1,
      formula: `=SUM(3:3)+C${row + 1}+LEN("long enough to be worth a copy, were it the same")`,
      value: 2,
    },
    { row, column: 2, value: row },
  ]).flat();
  const [sheet] = await added([{ ...emptySheet("Work"), cells }]);
  expect(sheet?.cells).toEqual(cells);
});

test("a chart is drawn with its own series, colours and place", async () => {
  const cells = Array.from({ length: 4 }, (_, row) => [
    { row, column: 0, value: `Part ${row}` },
    { row, column: 1, value: row },
    { row, column: 2, value: row * 2 },
  ]).flat();
  await added([
    {
      ...emptySheet("Lot's picture"),
      cells,
      charts: [
        {
          kind: "stacked bars",
          title: "What a bottle costs",
          says: "Glass costs most",
          categories: "'Lot''s picture'!$A$1:$A$4",
          series: [
            {
              name: "Today",
              values: "'Lot''s picture'!$B$1:$B$4",
              color: "#5b3a21",
            },
            {
              name: "In spring",
              values: "'Lot''s picture'!$C$1:$C$4",
              color: "#a58a6d",
            },
          ],
          unit: "$ a bottle",
          format: "0.00",
          area: { row: 5, column: 0, rows: 12, columns: 4 },
        },
      ],
    },
  ]);
  expect(book.state.sheets[1]?.charts).toEqual([
    {
      name: "Chart 1",
      type: "BarStacked",
      title: "What a bottle costs",
      from: "'Lot''s picture'!A6",
      to: "'Lot''s picture'!D17",
      series: [
        {
          name: "Today",
          values: "'Lot''s picture'!B1:B4",
          categories: "'Lot''s picture'!A1:A4",
          color: "#5b3a21",
        },
        {
          name: "In spring",
          values: "'Lot''s picture'!C1:C4",
          categories: "'Lot''s picture'!A1:A4",
          color: "#a58a6d",
        },
      ],
      more: {
        legend: true,
        valueTitle: "$ a bottle",
        valueFormat: "0.00",
        reversed: true,
      },
    },
  ]);
});

test("the printed page is set up as the sheet says", async () => {
  await added([
    {
      ...emptySheet("Work"),
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 0, rows: 2 },
        foot: "Fernkettle & Co",
      },
    },
  ]);
  expect(book.state.sheets[1]?.page).toEqual({
    orientation: "Landscape",
    paperSize: "Letter",
    zoom: { horizontalFitToPages: 1 },
    titleRows: "$1:$2",
    leftFooter: "Fernkettle && Co",
    rightFooter: "&P / &N",
  });
});

test("only the columns that are meant for the page print", async () => {
  await added([
    {
      ...emptySheet("Register"),
      cells: [{ row: 8, column: 30, value: "working" }],
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        upTo: { columns: 14 },
      },
    },
  ]);
  expect(book.state.sheets[1]?.page).toMatchObject({ printArea: "A1:N9" });
});

test("a wide sheet is printed on pages side by side, each beginning with the first column", async () => {
  await added([
    {
      ...emptySheet("Wide"),
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        across: 3,
      },
    },
  ]);
  expect(book.state.sheets[1]?.page).toMatchObject({
    zoom: { horizontalFitToPages: 3 },
    titleColumns: "$A:$A",
  });
});

test("a list Excel cannot hold is refused before anything is written", async () => {
  await expect(added(richWorkbook.sheets)).rejects.toThrow(
    'Farm settings, B3: the choice "Amber, rich" has a comma',
  );
  expect(workbookOf(book.state).sheets).toHaveLength(1);
});

test("an Excel that cannot be given notes gets the sheet without, and says so", async () => {
  const cells = [{ row: 0, column: 0, value: 3, note: "Agreed in spring" }];
  const [sheet] = await added([{ ...emptySheet("Work"), cells }], [], "1.9");
  expect(sheet?.cells).toEqual([{ row: 0, column: 0, value: 3 }]);
  expect((await openExcelHost()).inExcel.missing).toHaveLength(3);
});

test("an Excel that is too old for the pane is told so in a sentence", async () => {
  book = openWire(emptyBook(), { api: "1.8" });
  await expect(openExcelHost()).rejects.toThrow(
    "This Excel is too old for the pane",
  );
});
