import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { readCsv } from "../../../src/hosts/file/read-csv";
import { CannotAnswer } from "../../../src/measures/cannot-answer";

const read = (text: string): ReturnType<typeof readCsv> =>
  readCsv(text, "parts.csv");

test("rows know the line they begin on, past blank lines and line breaks inside a cell", () => {
  expect(
    read(
      '\uFEFFpart,note\r\n\r\njug,"two\r\nlines"\r\n , \r\n\r\n"12"" cap",8" wide\r\n',
    ),
  ).toEqual({
    headings: ["part", "note"],
    rows: [
      { line: 3, cells: ["jug", "two\nlines"] },
      { line: 7, cells: ['12" cap', '8" wide'] },
    ],
  });
});

test.each([
  ["a;b\n1,5;2\n", ["1,5", "2"]],
  ["a\tb\n1\t2", ["1", "2"]],
  ['"a, or; c",b\n1,2', ["1", "2"]],
  ["a\n1;2\n", ["1;2"]],
])("the first line says what parts the cells of %j", (text, cells) => {
  expect(read(text).rows).toEqual([{ line: 2, cells }]);
});

test("headings alone are a file without rows", () => {
  expect(read("part, on hand \n")).toEqual({
    headings: ["part", "on hand"],
    rows: [],
  });
});

test.each([
  ["", "parts.csv is empty."],
  ["\uFEFF\r\n \r\n", "parts.csv is empty."],
  ["part,\n1,2\n", "parts.csv, line 1, column 2: the heading is blank."],
  [
    "part,each,Part\n1,2,3\n",
    'parts.csv, line 1, column 3: the heading "Part" is already that of column 1.',
  ],
  [
    "part,each\njug,1\n\ncap\n",
    "parts.csv, line 4, column 2 (each): the row ends after 1 of 2 cells.",
  ],
  [
    "part,each\njug,1,2\n",
    "parts.csv, line 2, column 3: the row has 3 cells for 2 headings.",
  ],
  [
    'part,each\n"a\nb",1\njug,"2\ncap,3\n',
    "parts.csv, line 4, column 2: a quotation mark opens a cell and none closes it.",
  ],
  [
    'part,each\n"jug"s,"2"\n',
    "parts.csv, line 2, column 1: there is more text after the quotation mark that closes the cell.",
  ],
])("%j is refused with its line and column", (text, sentence) => {
  expect(() => read(text)).toThrow(CannotAnswer);
  expect(() => read(text)).toThrow(sentence);
});

test("whatever cells hold, they come back as they were written", () => {
  const cell = fc.string({
    unit: fc.constantFrom("a", " ", '"', ",", ";", "\n", "é", "\t", "'"),
  });
  const row = fc
    .tuple(cell, cell, cell)
    .filter((cells) => cells.some((c) => c.trim() !== ""));
  // Written by the rules of RFC 4180, section 2: every cell quoted, quotation marks doubled.
  const line = (cells: readonly string[]): string =>
    cells.map((c) => `"${c.replace(/"/g, '""')}"`).join(",");
  fc.assert(
    fc.property(fc.array(row), (rows) => {
      const text = [line(["lot", "lb", "seen, by"]), ...rows.map(line)].join(
        "\r\n",
      );
      expect(read(text).rows.map(({ cells }) => cells)).toEqual(rows);
    }),
  );
});

const demo = join(__dirname, "../../../sample-workbooks/fernkettle-hollow");

test.each(
  readdirSync(demo).filter(
    (name) => name.endsWith(".csv") && !name.startsWith("messy"),
  ),
)("the demo farm's %s is read whole", (name) => {
  const text = readFileSync(join(demo, name), "utf8");
  const { headings, rows } = readCsv(text, name);
  const lines = text.trim().split(/\r?\n/);
  expect(headings).toEqual((lines[0] ?? "").split(","));
  expect(rows).toHaveLength(lines.length - 1);
});
