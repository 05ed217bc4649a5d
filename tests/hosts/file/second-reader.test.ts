import ExcelJS from "exceljs";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { cellAddress } from "../../../src/sheets/address";
import type { Cell, Sheet } from "../../../src/sheets/workbook";
import { formulaInFile } from "../../../src/hosts/file/formula-text";
import { fernkettleBook } from "./fernkettle-book";

/** The same file as a library that had no part in writing it reads it. */
async function secondReading(): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(
    Buffer.from(await writeXlsx(fernkettleBook)) as unknown as ExcelJS.Buffer,
  );
  return book;
}

const each: readonly (readonly [string, Sheet, Cell])[] =
  fernkettleBook.sheets.flatMap((sheet) =>
    sheet.cells.map(
      (cell) =>
        [
          `${sheet.name} ${cellAddress(cell.row, cell.column)}`,
          sheet,
          cell,
        ] as const,
    ),
  );

describe("a second reader finds", () => {
  let book: ExcelJS.Workbook;
  beforeAll(async () => {
    book = await secondReading();
  });
  const at = (sheet: Sheet, { row, column }: Cell): ExcelJS.Cell => {
    const found = book.getWorksheet(sheet.name);
    if (!found) throw new Error(`no sheet ${sheet.name}`);
    return found.getCell(row + 1, column + 1);
  };

  test.each(each.filter(([, , { value }]) => value !== undefined))(
    "the value of %s",
    (_, sheet, cell) => {
      const found = at(sheet, cell);
      const shown = cell.formula === undefined ? found.value : found.result;
      // This reader does not undo `_xHHHH_` escapes, gives dates as Date and an empty result as none.
      const plain =
        typeof shown === "string"
          ? shown.replace(/_x005F_/g, "_")
          : shown instanceof Date
            ? shown.getTime() / 86_400_000 + 25_569
            : (shown ?? "");
      expect(plain).toEqual(cell.value);
    },
  );

  test.each(each.filter(([, , { formula }]) => formula !== undefined))(
    "the formula of %s",
    (_, sheet, cell) => {
      expect(at(sheet, cell).formula).toBe(formulaInFile(cell.formula ?? ""));
    },
  );

  test("the looks of a heading and of a counted part", () => {
    const heading = book.getWorksheet("Lots")?.getCell("A1");
    expect(heading?.font).toMatchObject({
      bold: true,
      color: { argb: "FFFFFFFF" },
    });
    expect(heading?.fill).toMatchObject({
      pattern: "solid",
      fgColor: { argb: "FF5B3A21" },
    });
    expect(heading?.alignment).toMatchObject({ wrapText: true });
    const part = book.getWorksheet("Parts on hand")?.getCell("B2");
    expect(part?.border).toMatchObject({
      top: { style: "thin", color: { argb: "FFD8CFC2" } },
      bottom: { style: "double" },
      left: { style: "medium" },
    });
    expect(book.getWorksheet("Lots")?.getCell("C2").numFmt).toBe('0.00" gal"');
  });

  test("the tables with their areas and columns", () => {
    const tables = book.worksheets.flatMap((sheet) =>
      // Its types promise an array of pairs; it gives the tables themselves.
      (
        sheet.getTables() as unknown as {
          table: ExcelJS.TableProperties & { tableRef: string };
        }[]
      ).map(({ table }) => [
        sheet.name,
        table.name,
        table.tableRef,
        table.columns.map(({ name }) => name),
      ]),
    );
    expect(tables).toEqual([
      [
        "Lots",
        "Lots",
        "A1:D3",
        // This reader stops listing columns after a calculated one.
        ["Lot", "lb", "gal (at 60 °F)"],
      ],
      ["Parts on hand", "Parts", "A1:B3", ["Part", "On hand"]],
    ]);
  });

  test("what may be typed, and how firmly", () => {
    const rule = (
      sheet: string,
      address: string,
    ): ExcelJS.DataValidation | undefined =>
      book.getWorksheet(sheet)?.getCell(address).dataValidation;
    expect(rule("Lots", "B3")).toMatchObject({
      type: "decimal",
      operator: "greaterThanOrEqual",
      formulae: [0],
      errorStyle: "stop",
      showErrorMessage: true,
      allowBlank: true,
    });
    expect(rule("Lots", "A7")).toMatchObject({
      type: "date",
      errorStyle: "warning",
    });
    expect(rule("Parts on hand", "A2")).toMatchObject({
      type: "list",
      formulae: ['"8 oz jug,12"" cap,label"'],
    });
    expect(rule("Parts on hand", "A11")).toMatchObject({
      type: "list",
      formulae: ["Channels"],
    });
    expect(rule("Parts on hand", "B2")).toMatchObject({
      type: "whole",
      operator: "lessThanOrEqual",
      formulae: [5000],
    });
  });

  test("notes, sizes, frozen panes, merged and hidden things, names", () => {
    const lots = book.getWorksheet("Lots");
    expect(lots?.getCell("A2").note).toBe("Barrel 7:\n second fill ");
    expect(lots?.getColumn(1).width).toBe(14);
    expect(lots?.getRow(1).height).toBe(31.5);
    expect(lots?.views[0]).toMatchObject({
      state: "frozen",
      xSplit: 1,
      ySplit: 1,
    });
    expect(lots?.properties.tabColor).toEqual({ argb: "FF8A5A2B" });
    expect(lots?.getCell("D10").master.address).toBe("A9");
    expect(book.getWorksheet("It's put away")?.state).toBe("hidden");
    expect(book.definedNames.getRanges("Channels").ranges).toEqual([
      "'Parts on hand'!$A$5:$A$7",
    ]);
  });
});

test("what a second library wrote is read: values, results, looks, rules and notes", async () => {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet("Fill checks");
  sheet.getCell("A1").value = new Date(Date.UTC(2025, 2, 1));
  sheet.getCell("A2").value = {
    formula: "1/0",
    result: { error: "#DIV/0!" },
  };
  sheet.getCell("A3").value = {
    formula: "A2=1",
    result: false,
  };
  sheet.getCell("A4").value = {
    formula: "_xlfn.TEXTJOIN(1,2)",
    result: "seen",
  };
  sheet.getCell("A5").value = "375 mL";
  sheet.getCell("A5").font = {
    bold: true,
    name: "Calibri",
    size: 11,
    color: { theme: 1 },
  };
  sheet.getCell("A6").value = 3;
  sheet.getCell("A6").fill = {
    type: "pattern",
    pattern: "solid",
    fgColor: { theme: 4 },
  };
  sheet.getCell("B1").note = "twice";
  sheet.getCell("C1").dataValidation = {
    type: "decimal",
    operator: "between",
    formulae: [1, 2],
    allowBlank: true,
  };
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  const { workbook } = await readXlsx(bytes, "checks.xlsx");
  expect(workbook.sheets[0]).toMatchObject({
    name: "Fill checks",
    cells: [
      { row: 0, column: 0, value: 45_717 },
      { row: 0, column: 1, note: "twice" },
      { row: 1, column: 0, formula: "=1/0", value: { error: "#DIV/0!" } },
      { row: 2, column: 0, formula: "=A2=1", value: false },
      { row: 3, column: 0, formula: "=TEXTJOIN(1,2)", value: "seen" },
      { row: 4, column: 0, value: "375 mL", style: { bold: true } },
      // Accent 1 of the theme this library writes (Office 2007-2010).
      { row: 5, column: 0, value: 3, style: { fill: "#4f81bd" } },
    ],
    validations: [
      {
        area: { row: 0, column: 2, rows: 1, columns: 1 },
        rule: { kind: "number", min: 1, max: 2 },
        strict: true,
      },
    ],
  });
  expect(workbook.sheets[0]?.cells[5]?.style).toEqual({ bold: true });
});
