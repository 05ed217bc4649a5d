import { unusable } from "../measures/cannot-answer";
import type { CellTerm, OptionalCell } from "../terms/term";
import { type CellReader, cellReader, isBlank } from "./read-cell";
import type { Words } from "./words";

type Rows = readonly (readonly unknown[])[];
type Columns = Readonly<Record<string, CellTerm | OptionalCell>>;

/** Reads rows of named columns into records; wholly blank rows and a heading row are passed over. */
export function rowsReader(
  columns: Columns,
  words: string,
): (given: Rows) => readonly unknown[] {
  const names = Object.keys(columns);
  const terms = Object.values(columns);
  const needed = terms.filter((t) => !("mayBeBlank" in t)).length;
  const isHeading = headingTest(terms);
  const readRecord = recordReader(columns);
  return (given) => {
    // Not Math.max(...): a whole worksheet column has more rows than a call may have arguments.
    const width = given.reduce((most, row) => Math.max(most, row.length), 0);
    if (width < needed || width > names.length)
      throw unusable(
        `${words}: ${names.length} columns are wanted (${names.map(inWords).join(", ")}), not ${width}`,
      );
    const [top] = given;
    const first =
      given.length > 1 && top !== undefined && isHeading(top) ? 1 : 0;
    const records: unknown[] = [];
    for (const [r, row] of given.entries()) {
      if (r < first || row.every(isBlank)) continue;
      records.push(readRecord(row, () => `${words}, row ${r + 1}`));
    }
    return records;
  };
}

function recordReader(
  columns: Columns,
): (row: readonly unknown[], where: Words) => unknown {
  const readers = Object.entries(columns).map(([name, term]) => ({
    name,
    said: inWords(name),
    read: cellReader(term),
    mayBeBlank: "mayBeBlank" in term,
  }));
  return (row, where) => {
    const record: Record<string, unknown> = {};
    for (const [c, { name, said, read, mayBeBlank }] of readers.entries()) {
      const cell = row[c];
      if (!isBlank(cell))
        record[name] = read(cell, () => `${where()}, ${said}`);
      else if (mayBeBlank) record[name] = undefined;
      else throw unusable(`${where()}: needs ${said}`);
    }
    return record;
  };
}

/** Reads one column or one row of cells; blanks are kept as undefined, or passed over. */
export function listReader(
  of: CellTerm,
  keepBlanks: boolean,
  words: string,
): (given: Rows) => readonly unknown[] {
  const read: CellReader = cellReader(of);
  const isHeading = headingTest([of]);
  return (given) => {
    const isOneLine =
      given.length === 1 || given.every((row) => row.length === 1);
    if (!isOneLine) throw unusable(`${words}: one column or one row is wanted`);
    const cells = given.flat();
    const first = cells.length > 1 && isHeading(cells.slice(0, 1)) ? 1 : 0;
    return cells
      .slice(first)
      .map((cell, i) =>
        isBlank(cell) ? undefined : read(cell, () => `${words}, item ${i + 1}`),
      )
      .filter((value) => keepBlanks || value !== undefined);
  };
}

/** A first row that is all text where numbers belong is a heading. */
function headingTest(
  terms: readonly CellTerm[],
): (row: readonly unknown[]) => boolean {
  const numeric = terms.map(
    (t) => !["text", "choice", "yes or no"].includes(t.kind),
  );
  return (row) => {
    if (!numeric.some((n, c) => n && c < row.length)) return false;
    return row.every((cell, c) => {
      if (!numeric[c]) return typeof cell === "string" || isBlank(cell);
      return (
        typeof cell === "string" &&
        /[A-Za-z]/.test(cell) &&
        !/^\s*[-+]?\d/.test(cell)
      );
    });
  };
}

const inWords = (name: string): string => name.replace(/_/g, " ");
