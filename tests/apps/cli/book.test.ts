import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
let csv: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "book-"));
  csv = path.join(folder, "farm");
  cpSync(demo, csv, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true }));

test("a farm's CSV files become a book that costs the same as the files themselves", async () => {
  const out = path.join(folder, "farm.xlsx");
  expect((await run(["book", csv, "--out", out])).code).toBe(0);
  const { workbook } = await readXlsx(readFileSync(out), "farm.xlsx");
  expect(workbook.sheets.map(({ name }) => name)).toContain("Bulk prices");
  const asked = ["--product", "P250-LOFT", "--bottles", "1200", "--json"];
  const [fromFiles, fromBook] = await Promise.all(
    [csv, out].map(async (place) => {
      const { said } = await run(["cost", place, ...asked]);
      return JSON.parse(said.join("")) as { costPerBottle: object };
    }),
  );
  expect(fromBook?.costPerBottle).toEqual(fromFiles?.costPerBottle);
});

test("a costing reads as money to four places, never rounded to whole units", async () => {
  const { said } = await run(["cost", csv, "--product", "P250-LOFT"]);
  const full = said.find((line) => line.startsWith("Full  ")) ?? "";
  expect(full.match(/\d+\.\d{4}\b/g)).toHaveLength(3);
});

test.each([
  [
    "a price that is no number",
    "packaging_price_breaks.csv",
    (text: string) =>
      text.replace(/\n([^,\n]+,[^,\n]+,)[^,\r\n]*/, "\n$1cheap"),
    /packaging_price_breaks\.csv line 2, .*cheap/,
  ],
  [
    "letters in an older code page",
    "lines.csv",
    () => Buffer.from([0x4c, 0xe9, 0x0a]),
    /lines\.csv: the file is not UTF-8/,
  ],
])(
  "%s is refused by file, and nothing is written",
  async (_, name, spoil, sentence) => {
    const file = path.join(csv, name);
    writeFileSync(file, spoil(readFileSync(file, "utf8")));
    const out = path.join(folder, "never.xlsx");
    const { code, complained } = await run(["book", csv, "--out", out]);
    expect(code).toBe(2);
    expect(complained).toHaveLength(1);
    expect(complained[0]).toMatch(sentence);
    expect(readdirSync(folder)).toEqual(["farm"]);
  },
);
