import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readXlsx } from "../../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../../src/hosts/file/write-xlsx";
import { calculate } from "../../../../src/hosts/grid/calculate";
import type { HeadlessHost } from "../../../../src/hosts/grid/open-headless";
import type {
  Cell,
  CellValue,
  Workbook,
} from "../../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../../support/libre-office";
import { column, functions, host, results, type } from "./typed-book";

/** The same book without results, in an engine that has seen nothing yet. */
const afresh = async (workbook: Workbook): Promise<Workbook> =>
  (
    await calculate(
      {
        ...workbook,
        sheets: workbook.sheets.map((sheet) => ({
          ...sheet,
          cells: sheet.cells
            .filter(({ spilled }) => !spilled)
            .map(({ value, ...cell }) =>
              cell.formula === undefined && value !== undefined
                ? { ...cell, value }
                : cell,
            ),
        })),
      },
      functions,
    )
  ).workbook;

/** Kinds and weights, what is priced by them, what reads whole columns, and answers that come to nothing. */
const farm: readonly Cell[] = [
  ...column(0, ["Amber", "Dark", "Amber", "Very dark", null]),
  ...column(1, [120.5, 80, null, 60, 1]),
  ...column(
    2,
    [1, 2, 3, 4, 5].map(
      (n) => `=IF(B${n}="","",B${n}*INDEX($F$1:$F$3,2))` as const,
    ),
  ),
  ...column(
    3,
    [1, 2, 3, 4, 5].map(
      (n) =>
        `=IF(ISNUMBER(INDEX($C$1:$C$5,${n})),INDEX($C$1:$C$5,${n})/2,"none")` as const,
    ),
  ),
  ...column(4, [
    '=SUMIFS(C1:C5,A1:A5,"Amber")',
    "=SUM(INDEX(C1:C5,2):INDEX(C1:C5,4))",
    '=SUMPRODUCT(--(C1:C5=""))',
    '=IFERROR(INDEX(C1:C5,3)+1,"refused")',
    '=IF(E1>E2,"more Amber","less Amber")',
    '=E5&"; "&COUNT(D1:D5)&" of "&COUNTIF(A1:A5,"?*")',
    "=MAX(C:C)-.5",
  ]),
  ...column(5, [2.1, 2.35, 2.6]),
];
const edits: readonly (readonly [number, number, CellValue])[] = [
  [1, 5, 2.5],
  [1, 5, 2.5],
  [0, 1, null],
  [2, 1, 55],
  [0, 0, "Dark"],
  [0, 1, "heavy"],
  [0, 1, 7],
  [2, 1, null],
];

describe("after an edit", () => {
  let grid: HeadlessHost;
  const states: Workbook[] = [];
  beforeAll(async () => {
    grid = await host(farm);
    states.push(grid.currentWorkbook());
    for (const [row, at, value] of edits) {
      await type(grid, row, at, value);
      states.push(grid.currentWorkbook());
    }
  }, 120_000);
  afterAll(() => grid.dispose());

  test("every result is what it is in a book opened afresh", async () => {
    for (const state of states)
      expect(results(state)).toEqual(results(await afresh(state)));
  }, 120_000);

  test("every result is what LibreOffice makes of it", async () => {
    const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-edits-"));
    const files = await Promise.all(
      states.map(async (state, i) => {
        const file = join(folder, `edit-${i}.xlsx`);
        writeFileSync(file, await writeXlsx(state));
        return file;
      }),
    );
    const made = convertWithLibreOffice(files, {
      to: "xlsx",
      recalculate: true,
    });
    for (const [i, file] of made.entries()) {
      const { workbook } = await readXlsx(readFileSync(file), `edit-${i}.xlsx`);
      const theirs = new Map(
        results(workbook).map(([, row, at, value]) => [`${row},${at}`, value]),
      );
      for (const [, row, at, value] of results(states[i] ?? workbook))
        expect([i, row, at, plain(theirs.get(`${row},${at}`))]).toEqual([
          i,
          row,
          at,
          plain(value),
        ]);
    }
  }, 200_000);
});

/** LibreOffice writes no value for an empty text, and may differ in the last digits of a number. */
const plain = (value: unknown): unknown =>
  typeof value === "number"
    ? Number(value.toPrecision(12))
    : value === undefined || value === ""
      ? null
      : value;
