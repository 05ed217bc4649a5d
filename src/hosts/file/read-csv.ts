import Papa from "papaparse";
import { unusable } from "../../measures/cannot-answer";

/** One row of a CSV file as text, with the line of the file it begins on (the first line is 1). */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * The headings and rows of a CSV text whose cells are parted by commas, semicolons or tabs, whichever the first line
 * uses most. Blank lines are skipped. Throws one sentence naming file, line and column for an empty file, a heading
 * that is missing or used twice, a quotation mark out of place, and a row with more or fewer cells than headings.
 */
export function readCsv(
  text: string,
  fileName: string,
): { readonly headings: readonly string[]; readonly rows: readonly CsvRow[] } {
  const plain = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const [first, ...rows] = linesOf(plain, fileName);
  if (!first) throw unusable(`${fileName} is empty.`);
  const headings = first.cells.map((cell) => cell.trim());
  checkHeadings(headings, `${fileName}, line ${first.line}`);
  for (const row of rows)
    checkWidth(row, headings, `${fileName}, line ${row.line}`);
  return { headings, rows };
}

function linesOf(plain: string, fileName: string): readonly CsvRow[] {
  const rows: CsvRow[] = [];
  let start = 0;
  let line = 1;
  const delimiter = delimiterOf(plain);
  Papa.parse<string[]>(plain, {
    delimiter,
    newline: "\n",
    step: ({ data, errors, meta }) => {
      const [error] = errors;
      if (error) {
        const before = plain.slice(
          start,
          Math.max(start, (error.index ?? start) - 1),
        );
        throw unusable(
          `${fileName}, line ${line + lineEnds(before)}, column ${lastColumn(before, delimiter)}: ${
            error.code === "MissingQuotes"
              ? "a quotation mark opens a cell and none closes it"
              : "there is more text after the quotation mark that closes the cell"
          }.`,
        );
      }
      if (data.some((cell) => cell.trim() !== ""))
        rows.push({ line, cells: data });
      line += lineEnds(plain.slice(start, meta.cursor));
      start = meta.cursor;
    },
  });
  return rows;
}

const lineEnds = (text: string): number => text.split("\n").length - 1;

/** The column a row has come to, counted from 1, given its text so far. */
const lastColumn = (row: string, delimiter: string): number =>
  Papa.parse<string[]>(row, { delimiter, newline: "\n" }).data[0]?.length ?? 1;

/** Counted outside quotation marks; a comma when the line has none of the three. */
function delimiterOf(plain: string): string {
  const line = (
    /^(?:"[^"]*"|[^"\n])*/.exec(plain.trimStart())?.[0] ?? ""
  ).replace(/"[^"]*"/g, "");
  const count = (mark: string): number => line.split(mark).length;
  return [";", "\t"].reduce(
    (best, mark) => (count(mark) > count(best) ? mark : best),
    ",",
  );
}

function checkHeadings(headings: readonly string[], where: string): void {
  const met = new Map<string, number>();
  headings.forEach((heading, i) => {
    if (heading === "")
      throw unusable(`${where}, column ${i + 1}: the heading is blank.`);
    const same = met.get(heading.toLowerCase());
    if (same !== undefined)
      throw unusable(
        `${where}, column ${i + 1}: the heading "${heading}" is already that of column ${same + 1}.`,
      );
    met.set(heading.toLowerCase(), i);
  });
}

function checkWidth(
  { cells }: CsvRow,
  headings: readonly string[],
  where: string,
): void {
  if (cells.length < headings.length)
    throw unusable(
      `${where}, column ${cells.length + 1} (${headings[cells.length]}): the row ends after ${cells.length} of ${headings.length} cells.`,
    );
  if (cells.length > headings.length)
    throw unusable(
      `${where}, column ${headings.length + 1}: the row has ${cells.length} cells for ${headings.length} headings.`,
    );
}
