import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ExcelJS from "exceljs";
import { checkPackage } from "../../../src/hosts/file/check-package";
import { partText, unpack } from "../../../src/hosts/file/package-parts";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { snapshotOf } from "../../../src/hosts/grid/snapshot";
import { workbookOf } from "../../../src/hosts/grid/workbook-of";
import type { Chart, Sheet, Workbook } from "../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../support/libre-office";

const kinds = ["bars", "stacked bars", "columns", "lines"] as const;

const chart = (kind: Chart["kind"], i: number): Chart => ({
  kind,
  title: `Where the money goes, "${kind}" & more`,
  says: "Syrup is the dearest part, glass < syrup & labour comes third.",
  categories: "'It''s a cost & more'!$A$1:$A$3",
  series: [
    {
      name: "a bottle",
      values: "'It''s a cost & more'!$B$1:$B$3",
      color: "#5a2e15",
    },
    ...(kind === "bars"
      ? []
      : [
          {
            name: "last year",
            values: "'It''s a cost & more'!$C$1:$C$3",
            color: "#c98a3c",
          },
        ]),
  ],
  unit: "$ a bottle",
  format: "0.00",
  area: { row: 4 + i * 14, column: 0, rows: 13, columns: 6 },
});

const sheet = (name: string): Sheet => ({
  name,
  cells: ["Syrup", "Glass", "Labour"].flatMap((part, row) => [
    { row, column: 0, value: part },
    { row, column: 1, value: 2.1 - row * 0.7 },
    { row, column: 2, value: 2 - row * 0.6 },
  ]),
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
});

const workbook: Workbook = {
  title: "Pictures",
  names: [],
  sheets: [
    sheet("Plain"),
    {
      ...sheet("It's a cost & more"),
      charts: kinds.map(chart),
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 0, rows: 2 },
        foot: "Tare & Tally, figures as of 2026-11-20",
      },
    },
    {
      ...sheet("One page"),
      print: { paper: "a4", landscape: false, fit: "one page" },
    },
    {
      ...sheet("Side by side"),
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        across: 3,
        headings: { first: 4, rows: 1 },
      },
    },
    {
      ...sheet("Wide"),
      print: { paper: "a4", landscape: true, fit: "one page wide", across: 2 },
    },
  ],
};

test("charts and print settings come back from a file as they were, and nothing is told as lost", async () => {
  const bytes = await writeXlsx(workbook);
  expect(checkPackage(bytes)).toEqual([]);
  const read = await readXlsx(bytes, "pictures.xlsx");
  expect(read.losses).toEqual([]);
  expect(read.workbook.sheets.map((s) => s.charts)).toEqual(
    workbook.sheets.map((s) => s.charts),
  );
  expect(read.workbook.sheets.map((s) => s.print)).toEqual(
    workbook.sheets.map((s) => s.print),
  );
  expect(await writeXlsx(read.workbook)).toEqual(bytes);
});

test("a chart refers to cells and copies none of their figures or labels", async () => {
  const parts = unpack(await writeXlsx(workbook));
  const charts = Object.keys(parts).filter((p) =>
    /charts\/chart\d+\.xml$/.test(p),
  );
  expect(charts).toHaveLength(kinds.length);
  for (const part of charts) {
    expect(partText(parts, part)).not.toMatch(/Cache|Syrup|Glass|2\.1/);
  }
});

test("the grid keeps what it does not draw", () => {
  const kept = workbookOf(snapshotOf(workbook));
  expect(kept.sheets.map((s) => s.charts)).toEqual(
    workbook.sheets.map((s) => s.charts),
  );
  expect(kept.sheets.map((s) => s.print)).toEqual(
    workbook.sheets.map((s) => s.print),
  );
});

test("a chart somebody else drew is told as a loss", async () => {
  const bytes = await writeXlsx(workbook);
  const parts = unpack(bytes);
  const [drawing = ""] = Object.keys(parts).filter((p) =>
    /drawings\/drawing\d+\.xml$/.test(p),
  );
  const { pack, partBytes } =
    await import("../../../src/hosts/file/package-parts");
  const foreign = pack({
    ...parts,
    [drawing]: partBytes(
      partText(parts, drawing).replace("Tare &amp; Tally picture 1", "Mine"),
    ),
  });
  const { workbook: read, losses } = await readXlsx(foreign, "mine.xlsx");
  expect(losses).toEqual(["a chart on sheet It's a cost & more"]);
  expect(read.sheets[1]?.charts).toHaveLength(kinds.length - 1);
});

describe("another program", () => {
  const folder = mkdtempSync(join(tmpdir(), "pictures-"));
  const file = join(folder, "pictures.xlsx");
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test("opens the file and prints its pages, repeated headings and foot among them", async () => {
    writeFileSync(file, await writeXlsx(workbook));
    const reader = new ExcelJS.Workbook();
    await reader.xlsx.readFile(file);
    expect(
      reader.worksheets.map(({ pageSetup }) => pageSetup.printTitlesRow),
    ).toEqual([undefined, "1:2", undefined, "5:5", undefined]);
    expect(
      reader.worksheets.map(({ pageSetup }) => [
        pageSetup.fitToWidth,
        pageSetup.printTitlesColumn,
      ]),
    ).toEqual([
      [undefined, undefined],
      [1, undefined],
      [1, undefined],
      [3, "A:A"],
      [2, "A:A"],
    ]);
    const [pdf = ""] = convertWithLibreOffice([file], { to: "pdf" });
    const bytes = readFileSync(pdf);
    rmSync(dirname(pdf), { recursive: true, force: true });
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    if (process.env["KEEP_PDF"]) writeFileSync(process.env["KEEP_PDF"], bytes);
  });
});
