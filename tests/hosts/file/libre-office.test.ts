import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type {
  Cell,
  Sheet,
  Stored,
  Workbook,
} from "../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../support/libre-office";
import { bookOf, fernkettleBook } from "./fernkettle-book";

/** Results that only a recalculation can give: the stored ones are wrong on purpose. */
const stale: Workbook = bookOf({
  cells: [
    { row: 0, column: 0, value: "lb" },
    { row: 1, column: 0, value: 600 },
    { row: 2, column: 0, value: 42 },
    { row: 0, column: 1, value: "share" },
    {
      row: 1,
      column: 1,
      formula: "=Lots[[#This Row],[lb]]/SUM(Lots[lb])",
      value: 0,
    },
    {
      row: 2,
      column: 1,
      formula: "=Lots[[#This Row],[lb]]/SUM(Lots[lb])",
      value: 0,
    },
    { row: 4, column: 0, formula: "=AGGREGATE(14,6,A2:A3,1)", value: 0 },
    {
      row: 5,
      column: 0,
      formula: '=IFS(A2<A3,"lighter",TRUE,"heavier")',
      value: "",
    },
    { row: 6, column: 0, formula: "=SYRUP.DENSITY(66.9,20)", value: 1.33 },
  ],
  tables: [
    {
      name: "Lots",
      area: { row: 0, column: 0, rows: 3, columns: 2 },
      columns: [
        { heading: "lb" },
        { heading: "share", formula: "=Lots[[#This Row],[lb]]/SUM(Lots[lb])" },
      ],
    },
  ],
});

// LibreOffice is a reader and a calculator that had no part in writing these files.
describe("LibreOffice", () => {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-files-"));
  const file = (name: string): string => join(folder, name);
  let opened: Workbook;
  let losses: readonly string[];
  let kept: Workbook;
  let calculated: Workbook;

  beforeAll(async () => {
    writeFileSync(file("book.xlsx"), await writeXlsx(fernkettleBook));
    writeFileSync(file("stale.xlsx"), await writeXlsx(stale));
    const read = async (
      path: string | undefined,
    ): ReturnType<typeof readXlsx> =>
      readXlsx(new Uint8Array(readFileSync(path ?? "")), "converted.xlsx");
    const [book, unchanged] = convertWithLibreOffice(
      [file("book.xlsx"), file("stale.xlsx")],
      { to: "xlsx" },
    );
    const [anew] = convertWithLibreOffice([file("stale.xlsx")], {
      to: "xlsx",
      recalculate: true,
    });
    ({ workbook: opened, losses } = await read(book));
    kept = (await read(unchanged)).workbook;
    calculated = (await read(anew)).workbook;
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const sheets = (book: Workbook): readonly Sheet[] => book.sheets;
  const valuesOf = (
    sheet: Sheet | undefined,
  ): Readonly<Record<string, Cell["value"]>> =>
    Object.fromEntries(
      (sheet?.cells ?? []).flatMap(({ row, column, value }) =>
        value === undefined || value === ""
          ? []
          : [[`${row},${column}`, storedThere(value)]],
      ),
    );
  const formulasOf = (sheet: Sheet | undefined): readonly string[] =>
    (sheet?.cells ?? []).flatMap(({ formula }) => (formula ? [formula] : []));

  test("opens every sheet and keeps the values, also beside functions it does not have", () => {
    expect(sheets(opened).map(({ name }) => name)).toEqual(
      fernkettleBook.sheets.map(({ name }) => name),
    );
    // The clock moves, and LibreOffice calculates at once what is stored as an error.
    const today = "5,3";
    const refused = "2,2";
    fernkettleBook.sheets.forEach((sheet, i) => {
      const found = Object.entries(valuesOf(opened.sheets[i])).filter(
        ([place]) => place !== today && (i > 0 || place !== refused),
      );
      const expected = Object.entries(valuesOf(sheet)).filter(
        ([place]) => i > 0 || place !== refused,
      );
      expect(Object.fromEntries(found)).toEqual(Object.fromEntries(expected));
    });
  });

  test("reads tables, notes and rules on both sheets", () => {
    fernkettleBook.sheets.forEach((sheet, i) => {
      const found = opened.sheets[i];
      expect(found?.tables.map(({ name, area }) => ({ name, area }))).toEqual(
        sheet.tables.map(({ name, area }) => ({ name, area })),
      );
      expect(noteTexts(found)).toEqual(noteTexts(sheet));
      expect(
        found?.validations.map(({ area, rule }) => ({ area, kind: rule.kind })),
      ).toEqual(
        expect.arrayContaining(
          sheet.validations.map(({ area, rule }) => ({
            area,
            kind: rule.kind,
          })),
        ),
      );
      expect(found?.merges).toEqual(sheet.merges);
      expect(found?.hidden).toBe(sheet.hidden);
    });
    expect(opened.names).toEqual(
      expect.arrayContaining([fernkettleBook.names[1]]),
    );
    expect(losses).not.toContainEqual(
      expect.stringMatching(/not understood|rule for what/),
    );
  });

  test("trusts the stored results until it is told to calculate", () => {
    expect(valuesOf(kept.sheets[0])).toMatchObject({
      "1,1": 0,
      "4,0": 0,
      "6,0": 1.33,
    });
  });

  test("calculates what is native, and so proves the functions have the names it knows", () => {
    expect(valuesOf(calculated.sheets[0])).toMatchObject({
      "1,1": storedThere(600 / 642),
      "2,1": storedThere(42 / 642),
      "4,0": 600,
      "5,0": "heavier",
      "6,0": { error: "#NAME?" },
    });
    expect(formulasOf(calculated.sheets[0])).toContain(
      '=IFS(A2<A3,"lighter",TRUE(),"heavier")',
    );
  });
});

/** LibreOffice stores 15 digits. */
const storedThere = (value: Stored): Stored =>
  typeof value === "number" ? Number(value.toPrecision(15)) : value;

const noteTexts = (sheet: Sheet | undefined): readonly string[] =>
  (sheet?.cells ?? []).flatMap(({ note }) =>
    note === undefined ? [] : [note.trim()],
  );
