import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { gridFunctions } from "../../../src/apps/grid-functions";
import { binderOf } from "../../../src/book/binder";
import { bookTablesFromCsv } from "../../../src/book/from-csv";
import { readBook } from "../../../src/book/read";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { calculate } from "../../../src/hosts/grid/calculate";
import { KG_PER_LB } from "../../../src/measures/units";
import { binderSheets } from "../../../src/sheets/binder/binder-sheets";
import type { Cell, Sheet, Workbook } from "../../../src/sheets/workbook";
import { root } from "../../architecture/project-files";
import { csvFile, demoFolder, replacing } from "../../book/csv-folder";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
let file: string;
let written: Workbook;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "binder-"));
  file = path.join(folder, "binder.xlsx");
  const { code, complained } = await run([
    "binder",
    demo,
    "--season",
    "2026",
    "--out",
    file,
  ]);
  expect([code, complained]).toEqual([0, []]);
  written = (await readXlsx(new Uint8Array(readFileSync(file)), "binder.xlsx"))
    .workbook;
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

const sheetOf = (workbook: Workbook, name: string): Sheet => {
  const found = workbook.sheets.find((sheet) => sheet.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
};
const rowNamed = (sheet: Sheet, name: string): number =>
  sheet.cells.find(({ column, value }) => column === 0 && value === name)
    ?.row ?? -1;
const cellAt = (sheet: Sheet, row: number, column: number): Cell | undefined =>
  sheet.cells.find((cell) => cell.row === row && cell.column === column);

const binderWith = (
  changes: Parameters<typeof demoFolder>[0] = {},
  season = 2026,
) => {
  const { book, findings } = readBook(
    bookTablesFromCsv(demoFolder(changes)).tables,
  );
  return binderOf(book, season, { findings });
};

test("the set has a sheet for each thing an auditor asks for, and every one prints", () => {
  expect(written.sheets.map(({ name }) => name)).toEqual([
    "Binder",
    "Binder runs",
    "Binder fill checks",
    "Binder densities",
    "Binder lots",
    "Binder trace test",
    "Binder gaps",
  ]);
  for (const { print } of written.sheets)
    expect([print?.fit, print?.headings, print?.foot]).toEqual([
      "one page wide",
      { first: 0, rows: 1 },
      expect.stringContaining("season 2026"),
    ]);
});

test("every run of the season is there, with the bottles the farm wrote down", () => {
  // Source: bottling_runs.csv, its rows dated 2026.
  const rows = readFileSync(path.join(demo, "bottling_runs.csv"), "utf8")
    .trim()
    .split("\n")
    .map((line) => line.split(","))
    .filter(([, date]) => date?.startsWith("2026"));
  const sheet = sheetOf(written, "Binder runs");
  for (const [name = "", , product, , bottles, , , drawn] of rows) {
    const at = rowNamed(sheet, name);
    expect([
      cellAt(sheet, at, 2)?.value,
      cellAt(sheet, at, 5)?.value,
      cellAt(sheet, at, 8)?.value,
      cellAt(sheet, at, 10)?.value,
    ]).toEqual([product, Number(bottles), Number(drawn), 0]);
  }
  const together = rowNamed(sheet, "Together");
  expect(cellAt(sheet, together, 5)?.value).toBe(
    rows.reduce((sum, row) => sum + Number(row[4]), 0),
  );
});

test("a fill check is the bottles' own weights over the pounds a gallon on the farm's tickets", () => {
  const { fills } = binderWith();
  const weighed = csvFile(
    readFileSync(path.join(demo, "fill_checks.csv"), "utf8"),
  ).rows.filter(({ cells }) => cells[0] === "RUN-22");
  const grams =
    weighed.reduce(
      (sum, { cells }) => sum + Number(cells[3]) - Number(cells[2]),
      0,
    ) / weighed.length;
  // Source: bulk_lots.csv, 11.035 lb a gallon at the run's 66.1 Brix, rounded there to a thousandth.
  const perMl = (11.035 * 453.59237) / 3785.411784;
  const own = fills.find(({ run: name }) => name === "RUN-22");
  expect((own?.mean ?? 0) * 1000).toBeCloseTo(grams / perMl, 1);
  // Handbook 133, category A: 24 of a lot of 251 to 3,200 (from memory).
  expect([own?.tests.sampleSize.found, own?.tests.sampleSize.limit]).toEqual([
    weighed.length,
    24,
  ]);
});

test("the shortfall somebody types counts that run's own bottles and no other's", async () => {
  const binder = binderWith();
  const sheets = binderSheets(binder);
  const page = sheetOf({ title: "", names: [], sheets }, "Binder fill checks");
  for (const fill of binder.fills) {
    const at = page.cells.find(
      ({ column, value }) => column === 0 && value === fill.run,
    )?.row;
    const short = 0.5;
    const typed = page.cells.map((cell) =>
      cell.row === at && cell.column === 14 ? { ...cell, value: short } : cell,
    );
    const { workbook } = await calculate(
      { title: "", names: [], sheets: [{ ...page, cells: typed }] },
      gridFunctions,
    );
    const declared = fill.declared * 1000;
    expect(cellAt(sheetOf(workbook, page.name), at ?? -1, 15)?.value).toBe(
      fill.bottles.filter(
        ({ net }) => net !== undefined && net * 1000 < declared - short,
      ).length,
    );
  }
}, 120_000);

test("every lot closes over the season: there, in, out and left", () => {
  const { lots } = binderWith();
  const pounds = (kilograms: number) => Math.round(kilograms / KG_PER_LB);
  // Source: bulk_lots.csv and lot_use.csv: 25-13 came in 2025 with 7,946 lb and went out whole.
  const late = lots.find(({ name }) => name === "25-13");
  expect([pounds(late?.received ?? -1), pounds(late?.left ?? -1)]).toEqual([
    0, 0,
  ]);
  const sheet = sheetOf(written, "Binder lots");
  const closes = sheet.cells.filter(
    ({ column, formula }) => column === 13 && formula !== undefined,
  );
  expect(closes).toHaveLength(lots.length);
  for (const { value } of closes) expect(value).toBe("yes");
});

test("the trace test follows a lot forward and a run back, and leaves nothing over", () => {
  const { traces } = binderWith();
  expect(traces.map(({ direction }) => direction)).toEqual(["forward", "back"]);
  // Source: lot_use.csv: RUN-34 drew 1,475 lb, all of 26-03.
  const back = traces[1];
  expect([back?.name, back?.containers.map(({ name }) => name)]).toEqual([
    "RUN-34",
    ["26-03"],
  ]);
  expect((back?.total ?? 0) / KG_PER_LB).toBeCloseTo(1475, 6);
});

test("gaps name what the records lack", () => {
  const gapsWith = (changes: Parameters<typeof demoFolder>[0]) =>
    binderWith(changes).gaps.map(({ found }) => found);
  const plain = gapsWith({});
  expect(plain.some((found) => found.startsWith("no fill check: "))).toBe(true);
  // Source: stock_count.csv, 26-05 with 6,683 lb counted and 6,726 lb by the book.
  expect(plain).toContain("counted 6,683 lb, the book says 6,726 lb");
  const cold = gapsWith({
    "bottling_runs.csv": replacing(",4,185.4,26-03:1475", ",4,,26-03:1475"),
  });
  expect(cold).toContain("not entered: RUN-34");
  expect(plain).not.toContain("not entered: RUN-34");
  const nobody = gapsWith({
    "bulk_lots.csv": replacing(
      "26-13,2026-09-22,2026,G05",
      "26-13,2026-09-22,2026,",
    ),
  });
  expect(nobody).toContain("not entered: 26-13");
  const lost = gapsWith({
    "lot_use.csv": replacing(
      "2026-11-17,26-03,bottled,RUN-34,1475",
      "2026-11-17,26-03,bottled,RUN-34,1400",
    ),
  });
  expect(lost).toContain("75 lb not accounted for");
});

test("text that looks like a formula stays text", () => {
  const binder = binderWith({
    "bottling_runs.csv": replacing("185.4,26-03:1475", "185.4,=1+1"),
  });
  const page = sheetOf(
    { title: "", names: [], sheets: binderSheets(binder) },
    "Binder runs",
  );
  const cell = page.cells.find(({ value }) => value === "=1+1");
  expect(cell).toBeDefined();
  expect(cell?.formula).toBeUndefined();
});

test("a season the book knows nothing of, a lot it does not hold and the book's own name are refused", async () => {
  const out = path.join(folder, "other.xlsx");
  for (const [args, says] of [
    [["--season", "2019", "--out", out], "holds nothing of it"],
    [["--season", "2026", "--out", out, "--lot", "26-99"], "26-99"],
    [["--season", "2026", "--out", file], "exists already"],
    [["--season", "2026"], "Needs --out"],
  ] as const) {
    const { code, complained } = await run(["binder", demo, ...args]);
    expect([code, complained.join("")]).toEqual([
      2,
      expect.stringContaining(says),
    ]);
  }
  expect(existsSync(out)).toBe(false);
});

test("a sentence that wraps has the room for its lines", () => {
  const sheet = sheetOf(written, "Binder gaps");
  const long = sheet.cells.filter(
    ({ column, value }) =>
      column === 1 && typeof value === "string" && value.length > 110,
  );
  expect(long.length).toBeGreaterThan(0);
  // Two lines at least, of some 13 points each.
  for (const { row } of long)
    expect(sheet.heights[row] ?? 0).toBeGreaterThan(26);
});
