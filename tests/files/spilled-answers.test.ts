import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { gridFunctions } from "../../src/apps/grid-functions";
import { checkPackage } from "../../src/hosts/file/check-package";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import {
  openHeadless,
  type HeadlessHost,
} from "../../src/hosts/grid/open-headless";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { partsOf } from "../hosts/file/packages";
import { bookOf } from "../hosts/grid/invented-workbook";
import { convertWithLibreOffice } from "../support/libre-office";

/** A certification bill over 13 lots and 18 runs, the order of 619 labels, and a plain formula that fills three cells. */
const asked = bookOf([
  { row: 0, column: 0, value: 13 },
  { row: 1, column: 0, value: 18 },
  { row: 0, column: 2, formula: "=SYRUP.ALLOCATE(10600,A1:A2)" },
  { row: 1, column: 2, style: { bold: true, format: "0.00" } },
  { row: 3, column: 0, value: 250 },
  { row: 3, column: 1, value: 0.55 },
  { row: 4, column: 0, value: 500 },
  { row: 4, column: 1, value: 0.41 },
  { row: 5, column: 0, value: 1000 },
  { row: 5, column: 1, value: 0.29 },
  { row: 3, column: 3, formula: "=SYRUP.BEST_BUY(619,A4:B6,250)" },
  { row: 7, column: 0, formula: "=A4:A6*2" },
  { row: 7, column: 4, formula: "=SUM(C1:C2)" },
]);

/** By hand: 10,600 × 13 ÷ 31 and × 18 ÷ 31; 1,000 × 0.29 = 290 against 750 × 0.41 = 307.50, 381 left over; 2 × each quantity. */
const answers: Readonly<Record<string, Stored>> = {
  C1: 4445.16,
  C2: 6154.84,
  D4: 1000,
  E4: 0.29,
  F4: 290,
  G4: 381,
  H4: 17.5,
  A8: 500,
  A9: 1000,
  A10: 2000,
};
const near = (value: unknown): unknown =>
  typeof value === "number" ? Number(value.toPrecision(12)) : value;

const opened: HeadlessHost[] = [];
const kept = async (workbook: Workbook): Promise<Workbook> => {
  const host = await openHeadless(workbook, gridFunctions);
  opened.push(host);
  return host.currentWorkbook();
};

describe("an answer that fills several cells", () => {
  let calculated: Workbook;
  let bytes: Uint8Array;
  beforeAll(async () => {
    calculated = (await calculate(asked, gridFunctions)).workbook;
    bytes = await writeXlsx(calculated);
  });
  afterAll(() => {
    for (const host of opened) host.dispose();
  });

  test("is told with the formula and in every cell it fills", () => {
    const cells = calculated.sheets[0]?.cells ?? [];
    expect(
      cells.flatMap(({ spills, row, column }) =>
        spills ? [[row, column, spills]] : [],
      ),
    ).toEqual([
      [0, 2, { rows: 2, columns: 1 }],
      [3, 3, { rows: 1, columns: 5 }],
      [7, 0, { rows: 3, columns: 1 }],
    ]);
    expect(cells.filter(({ spilled }) => spilled)).toHaveLength(7);
    expect(cells.find((c) => c.row === 1 && c.column === 2)).toEqual({
      row: 1,
      column: 2,
      value: 6154.84,
      spilled: true,
      style: { bold: true, format: "0.00" },
    });
  });

  test("is all in the file, as a second reader finds it, and the package is whole", async () => {
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(Buffer.from(bytes) as unknown as ExcelJS.Buffer);
    const sheet = book.getWorksheet("Work");
    const shown = Object.fromEntries(
      Object.keys(answers).map((address) => {
        const cell = sheet?.getCell(address);
        return [address, near(cell?.formula ? cell.result : cell?.value)];
      }),
    );
    expect(shown).toEqual(answers);
    expect(checkPackage(bytes)).toEqual([]);
  });

  // The form Excel itself writes for a formula that spills: [MS-XLSX] 2.2.4.8, ECMA-376 part 1, 18.3.1.40 and 18.9.
  test("is stored as Excel stores a formula that spills", () => {
    const parts = partsOf(bytes);
    const sheet = parts["xl/worksheets/sheet1.xml"];
    expect(sheet).toMatch(
      /<c r="D4"[^>]* cm="1"[^>]*><f t="array" ref="D4:H4">_xldudf_SYRUP_BEST_BUY\(/,
    );
    expect(sheet).toMatch(/<c r="H4"[^>]*><v>17\.5<\/v>/);
    expect(parts["xl/metadata.xml"]).toContain('fDynamic="1"');
    expect(parts["[Content_Types].xml"]).toContain("/xl/metadata.xml");
    expect(parts["xl/_rels/workbook.xml.rels"]).toContain("metadata.xml");
  });

  test("comes back as it went in, and saved again after loading is the same file", async () => {
    const { workbook, losses } = await readXlsx(bytes, "spilled.xlsx");
    expect(workbook).toEqual({ ...calculated });
    expect(losses).toEqual([]);
    const again = await kept(workbook);
    expect(again.sheets).toEqual(calculated.sheets);
    expect(Buffer.from(await writeXlsx(again)).equals(bytes)).toBe(true);
    const anew = await calculate(workbook, gridFunctions);
    expect(anew.workbook).toEqual(calculated);
  });

  test("leaves no cell behind when it shrinks, and keeps the look that was there", async () => {
    const [sheet] = calculated.sheets;
    if (!sheet) throw new Error("no sheet");
    const narrower = {
      ...calculated,
      sheets: [
        {
          ...sheet,
          cells: sheet.cells.map((cell) =>
            cell.formula === "=SYRUP.ALLOCATE(10600,A1:A2)"
              ? { ...cell, formula: "=SYRUP.ALLOCATE(10600,A1)" }
              : cell,
          ),
        },
      ],
    };
    const { workbook } = await calculate(narrower, gridFunctions);
    const at = (row: number, column: number) =>
      workbook.sheets[0]?.cells.find(
        (c) => c.row === row && c.column === column,
      );
    expect(at(0, 2)).toEqual({
      row: 0,
      column: 2,
      formula: "=SYRUP.ALLOCATE(10600,A1)",
      value: 10600,
    });
    expect(at(1, 2)).toEqual({
      row: 1,
      column: 2,
      style: { bold: true, format: "0.00" },
    });
    expect(at(7, 4)?.value).toBe(10600);
  });

  test("that finds a typed cell in its way fills nothing and takes nothing away", async () => {
    const blocked = bookOf([
      { row: 0, column: 0, formula: "=SYRUP.ALLOCATE(100,{1;1;1})" },
      { row: 1, column: 0, value: "typed" },
    ]);
    const { workbook } = await calculate(blocked, gridFunctions);
    expect(workbook.sheets[0]?.cells).toEqual([
      { ...blocked.sheets[0]?.cells[0], value: { error: "#SPILL!" } },
      blocked.sheets[0]?.cells[1],
    ]);
  });

  test("of a plain formula is worked out by LibreOffice too, which has not our functions and says so in every cell of theirs", async () => {
    const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-spilled-"));
    try {
      const file = join(folder, "spilled.xlsx");
      writeFileSync(file, bytes);
      const [csv] = convertWithLibreOffice([file], { to: "csv" });
      const rows = readFileSync(csv ?? "", "utf8")
        .split("\n")
        .map((line) => line.split(","));
      expect([7, 8, 9].map((row) => rows[row]?.[0])).toEqual([
        "500",
        "1000",
        "2000",
      ]);
      expect(rows[3]?.slice(3)).toEqual(Array(5).fill("#NAME?"));
      expect([rows[0]?.[2], rows[1]?.[2]]).toEqual(["#NAME?", "#NAME?"]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
