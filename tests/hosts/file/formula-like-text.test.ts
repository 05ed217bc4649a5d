import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ExcelJS from "exceljs";
import { addToWorkbook } from "../../../src/hosts/file/patch/add-to-workbook";
import { appendRows } from "../../../src/hosts/file/patch/append-rows";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../support/libre-office";

/** Words of a grower, a buyer or a note that a worksheet program would run if it took them for a formula. */
const texts = [
  "=2+3",
  "+2+3",
  "-2+3",
  "@SUM(A1:A3)",
  "\t=2+3",
  "\r=2+3",
  '=HYPERLINK("http://127.0.0.1/","open")',
  "=A1|'/C calc'!A0",
  "'=2+3",
] as const;

const sheet = (name: string, table: string): Sheet => ({
  name,
  cells: [
    { row: 0, column: 0, value: "Said" },
    { row: 0, column: 1, value: "No" },
    ...texts.flatMap((value, i) => [
      { row: i + 1, column: 0, value, note: value },
      { row: i + 1, column: 1, value: i },
    ]),
  ],
  tables: [
    {
      name: table,
      area: { row: 0, column: 0, rows: texts.length + 1, columns: 2 },
      columns: [{ heading: "Said" }, { heading: "No" }],
    },
  ],
  validations: [
    {
      area: { row: 1, column: 3, rows: 1, columns: 1 },
      rule: { kind: "list", choices: texts.slice(0, 3) },
      strict: true,
    },
  ],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
  print: {
    paper: "letter",
    landscape: false,
    fit: "one page wide",
    foot: texts[0],
  },
});

const book = (one: Sheet): Workbook => ({
  title: texts[0],
  names: [],
  sheets: [one],
});

let folder: string;
/** The file a writer makes, by what it is called, with the sheet and rows that hold the texts. */
interface Made {
  readonly bytes: Uint8Array;
  readonly sheet: string;
  readonly top: number;
}
const files = new Map<string, Made>();
let recalculated: ReadonlyMap<string, string>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "formula-like-"));
  const written = await writeXlsx(book(sheet("Said", "Said1")));
  files.set("written", { bytes: written, sheet: "Said", top: 1 });
  files.set("appended", {
    bytes: appendRows(
      written,
      "said.xlsx",
      "Said1",
      texts.map((Said, No) => ({ Said, No })),
    ),
    sheet: "Said",
    top: 1 + texts.length,
  });
  files.set("added", {
    bytes: await addToWorkbook(written, "said.xlsx", {
      sheets: [sheet("Ours", "Said2")],
      names: [],
    }),
    sheet: "Ours",
    top: 1,
  });
  const paths = [...files].map(([name, { bytes }]) => {
    const file = join(folder, `${name}.xlsx`);
    writeFileSync(file, bytes);
    return file;
  });
  const made = convertWithLibreOffice(paths, { to: "xlsx", recalculate: true });
  recalculated = new Map(
    [...files.keys()].map((name, i) => [name, made[i] ?? ""]),
  );
}, 120_000);

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  for (const file of recalculated.values())
    rmSync(dirname(file), { recursive: true, force: true });
});

describe.each(["written", "appended", "added"])("in a file %s", (name) => {
  test("such texts are texts to us", async () => {
    const { bytes, sheet: on, top } = files.get(name) as Made;
    const { workbook } = await readXlsx(bytes, "said.xlsx");
    const cells = workbook.sheets.find((one) => one.name === on)?.cells ?? [];
    expect(cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
    expect(
      texts.map(
        (_, i) =>
          cells.find(({ row, column }) => row === top + i && column === 0)
            ?.value,
      ),
    ).toEqual(texts);
  });

  // Beside our own reader: a package library and LibreOffice, which works out every formula it finds.
  test("such texts are texts to a package library and to LibreOffice", async () => {
    const { sheet: on, top } = files.get(name) as Made;
    for (const file of [
      join(folder, `${name}.xlsx`),
      recalculated.get(name) ?? "",
    ]) {
      const reader = new ExcelJS.Workbook();
      await reader.xlsx.load(readFileSync(file) as never);
      const cells = texts.map((_, i) =>
        reader.getWorksheet(on)?.getCell(top + i + 1, 1),
      );
      expect(cells.map((cell) => cell?.type)).toEqual(
        texts.map(() => ExcelJS.ValueType.String),
      );
      expect(cells.map((cell) => asRead(cell?.value))).toEqual(
        texts.map(asRead),
      );
    }
  });
});

/** A tab and a carriage return are kept as codes or as plain spaces by other programs. */
const asRead = (value: unknown): string =>
  String(value)
    .replace(/_x0009_|_x000D_/gi, " ")
    .replace(/[\t\r\n]/g, " ")
    .trim();

test("a note, a choice and a foot that look like formulas stay texts", async () => {
  const { workbook } = await readXlsx(
    files.get("written")?.bytes ?? new Uint8Array(),
    "said.xlsx",
  );
  const [one] = workbook.sheets;
  expect(one?.cells.find(({ note }) => note === texts[0])).toBeDefined();
  expect(one?.validations[0]?.rule).toEqual({
    kind: "list",
    choices: texts.slice(0, 3),
  });
  expect(one?.print?.foot).toBe(texts[0]);
});
