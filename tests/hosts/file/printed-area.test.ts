import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import {
  pack,
  partBytes,
  partText,
  unpack,
} from "../../../src/hosts/file/package-parts";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Workbook } from "../../../src/sheets/workbook";

const workbook: Workbook = {
  title: "Registers",
  names: [],
  sheets: [
    {
      name: "It's a register",
      cells: [
        { row: 0, column: 0, value: "Ticket" },
        { row: 4, column: 40, value: "working" },
      ],
      tables: [],
      validations: [],
      merges: [],
      widths: {},
      heights: {},
      frozen: { rows: 0, columns: 0 },
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 2, rows: 1 },
        upTo: { columns: 28, rows: 4 },
      },
    },
  ],
};

test("the printed cells come back from a file as they were, beside the rows every page repeats", async () => {
  const bytes = await writeXlsx(workbook);
  const { workbook: read, losses } = await readXlsx(bytes, "registers.xlsx");
  expect(losses).toEqual([]);
  expect(read.sheets[0]?.print).toEqual(workbook.sheets[0]?.print);
  expect(await writeXlsx(read)).toEqual(bytes);
});

test("without a count of rows everything down to the last cell prints", async () => {
  const [sheet] = workbook.sheets;
  if (!sheet?.print) throw new Error("no print");
  const open = { ...sheet, print: { ...sheet.print, upTo: { columns: 28 } } };
  const { workbook: read } = await readXlsx(
    await writeXlsx({ ...workbook, sheets: [open] }),
    "registers.xlsx",
  );
  expect(read.sheets[0]?.print?.upTo).toEqual({ columns: 28, rows: 5 });
});

test("a general spreadsheet library reads the same printed cells", async () => {
  const folder = mkdtempSync(join(tmpdir(), "printed-"));
  try {
    const file = join(folder, "registers.xlsx");
    writeFileSync(file, await writeXlsx(workbook));
    const reader = new ExcelJS.Workbook();
    await reader.xlsx.readFile(file);
    expect(reader.worksheets[0]?.pageSetup).toMatchObject({
      printArea: "A1:AB4",
      printTitlesRow: "3:3",
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("printed cells that do not begin with the first are told as lost", async () => {
  const parts = unpack(await writeXlsx(workbook));
  const name = "xl/workbook.xml";
  const foreign = pack({
    ...parts,
    [name]: partBytes(partText(parts, name).replace("$A$1:$AB", "$B$2:$AB")),
  });
  const { workbook: read, losses } = await readXlsx(foreign, "theirs.xlsx");
  expect(read.sheets[0]?.print).toBeUndefined();
  expect(losses).toContain("print settings on sheet It's a register");
});
