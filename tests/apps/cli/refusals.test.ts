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
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
let farm: string;
let out: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "refused-"));
  farm = path.join(folder, "farm");
  out = path.join(folder, "out.xlsx");
  cpSync(demo, farm, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true }));

/** One sentence, exit code 2, nothing said and nothing new in the folder. */
async function refusal(args: readonly string[]): Promise<string> {
  const before = readdirSync(folder);
  const { code, said, complained } = await run(args);
  expect({ code, said, lines: complained.length }).toEqual({
    code: 2,
    said: [],
    lines: 1,
  });
  expect(complained[0]).not.toMatch(/\n|fault of the program/);
  expect(readdirSync(folder)).toEqual(before);
  return complained[0] ?? "";
}

const spoilt = (name: string, how: (text: string) => string): void => {
  const file = path.join(farm, name);
  const text = readFileSync(file, "utf8");
  const changed = how(text);
  expect(changed).not.toBe(text);
  writeFileSync(file, changed);
};

/** Puts a value in one cell of a CSV file without quoted cells before it; lines count from 1, cells from 0. */
const withCell =
  (line: number, cell: number, value: string) =>
  (text: string): string =>
    text
      .split("\n")
      .map((row, i) =>
        i + 1 === line
          ? row
              .split(",")
              .map((old, c) => (c === cell ? value : old))
              .join(",")
          : row,
      )
      .join("\n");

test.each([
  [
    "a price that is no number",
    "current_prices.csv",
    withCell(3, 2, "abc"),
    /^current_prices\.csv line 3, price_usd: "abc" is not a number$/,
  ],
  [
    "a decimal comma",
    "current_prices.csv",
    withCell(3, 2, '"13,49"'),
    /^current_prices\.csv line 3, price_usd: "13,49" looks like 13\.49/,
  ],
  [
    "a day that does not exist",
    "current_prices.csv",
    withCell(4, 3, "2026-02-30"),
    /^current_prices\.csv line 4, valid_from: there is no day 2026-02-30$/,
  ],
  [
    "a column that is missing",
    "bulk_lots.csv",
    (text: string) => text.replace("price_per_lb_usd", "paid"),
    /^bulk_lots\.csv has no column price_per_lb_usd, /,
  ],
  [
    "a quotation mark that is never closed",
    "lines.csv",
    (text: string) => `${text}Third line,"no end\n`,
    /^lines\.csv, line \d+, column 2: a quotation mark opens a cell and none closes it\.$/,
  ],
  [
    "a row that ends too soon",
    "lines.csv",
    (text: string) => `${text}Third line,2\n`,
    /^lines\.csv, line \d+, column 3 \(heads\): the row ends after 2 of 13 cells\.$/,
  ],
])(
  "%s is refused by file, line and column, by cost and by book",
  async (_, name, how, sentence) => {
    spoilt(name, how);
    expect(await refusal(["cost", farm, "--out", out])).toMatch(sentence);
    expect(await refusal(["book", farm, "--out", out])).toMatch(sentence);
  },
);

test("a folder without one of the files the costing needs is refused by the file's name", async () => {
  rmSync(path.join(farm, "skus.csv"));
  expect(await refusal(["cost", farm])).toBe(
    "the folder has no skus.csv, which holds the table Products",
  );
});

test("what is no farm book at all is refused by its name", async () => {
  const missing = path.join(folder, "nowhere");
  expect(await refusal(["cost", missing])).toBe(
    `${missing}: there is no such file or folder.`,
  );
  expect(await refusal(["book", missing, "--out", out])).toBe(
    `${missing}: there is no such folder.`,
  );
  const text = path.join(folder, "notes.txt");
  writeFileSync(text, "hello");
  expect(await refusal(["cost", text])).toBe(
    `${text}: a farm book is a folder of CSV files or an .xlsx file.`,
  );
});

test("a damaged workbook is refused by its name", async () => {
  const whole = readFileSync(
    path.join(root, "sample-workbooks/fernkettle-hollow.xlsx"),
  );
  for (const [name, bytes] of [
    ["cut-short.xlsx", whole.subarray(0, 5000)],
    ["text.xlsx", Buffer.from("hello")],
    ["empty.xlsx", Buffer.alloc(0)],
  ] as const) {
    const file = path.join(folder, name);
    writeFileSync(file, bytes);
    expect(await refusal(["cost", file])).toMatch(new RegExp(`^${name} is `));
  }
});

test("a file that exists is left as it is, unless replacing it is asked for", async () => {
  writeFileSync(out, "mine");
  for (const command of ["cost", "book"])
    expect(await refusal([command, farm, "--out", out])).toBe(
      `--out ${out}: the file exists already and was left as it is; add --force to replace it.`,
    );
  expect(readFileSync(out, "utf8")).toBe("mine");
  const { code } = await run(["book", farm, "--out", out, "--force"]);
  expect(code).toBe(0);
  expect(readFileSync(out).subarray(0, 2).toString()).toBe("PK");
});

test("an output with no folder to stand in is refused before the book is read", async () => {
  const nowhere = path.join(folder, "no", "out.xlsx");
  expect(await refusal(["cost", farm, "--out", nowhere])).toBe(
    `--out ${nowhere}: the folder does not exist.`,
  );
});

test("options are refused in one sentence of ours", async () => {
  expect(await refusal(["cost", farm, "--bottles", "-5"])).toMatch(
    /^--bottles: a value that starts with a dash is written --bottles=VALUE\. Usage: /,
  );
  expect(await refusal(["cost", farm, "--bottles"])).toMatch(/ Usage: /);
  expect(await refusal(["cost", farm, farm])).toContain("is one too many");
  expect(await refusal(["cost"])).toMatch(/^Needs a farm book: /);
  expect(await refusal(["book", farm])).toMatch(/^Needs --out FILE\.xlsx\. /);
});
