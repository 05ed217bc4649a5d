import { unusable } from "../measures/cannot-answer";
import type { CellTerm, OptionalCell } from "../terms/term";
import { type CellReader, cellReader, isBlank } from "./read-cell";

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
  const readRecord = recordReader(columns, words);
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
    for (let r = first; r < given.length; r += 1) {
      const row = given[r] ?? [];
      if (!row.every(isBlank)) records.push(readRecord(row, r));
    }
    return records;
  };
}

/** A range can have a hundred thousand rows: whatever is the same for all of them is made once. */
function recordReader(
  columns: Columns,
  words: string,
): (row: readonly unknown[], place: number) => unknown {
  let at = 0;
  const where = (): string => `${words}, row ${at + 1}`;
  const readers = Object.entries(columns).map(([name, term]) => ({
    name,
    said: inWords(name),
    where: () => `${where()}, ${inWords(name)}`,
    read: cellReader(term),
    mayBeBlank: "mayBeBlank" in term,
  }));
  return (row, place) => {
    at = place;
    const record: Record<string, unknown> = {};
    for (let c = 0; c < readers.length; c += 1) {
      const column = readers[c];
      if (column === undefined) continue;
      const cell = row[c];
      if (!isBlank(cell)) record[column.name] = column.read(cell, column.where);
      else if (column.mayBeBlank) record[column.name] = undefined;
      else throw unusable(`${where()}: needs ${column.said}`);
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
  let at = 0;
  const where = (): string => `${words}, item ${at}`;
  return (given) => {
    const cells = oneLine(given, words);
    const values: unknown[] = [];
    const first = cells.length > 1 && isHeading(cells.slice(0, 1)) ? 1 : 0;
    for (let c = first; c < cells.length; c += 1) {
      at = c - first + 1;
      const cell = cells[c];
      if (!isBlank(cell)) values.push(read(cell, where));
      else if (keepBlanks) values.push(undefined);
    }
    return values;
  };
}

function oneLine(given: Rows, words: string): readonly unknown[] {
  const [only] = given;
  if (given.length === 1 && only) return only;
  return given.map((row) => {
    if (row.length !== 1)
      throw unusable(`${words}: one column or one row is wanted`);
    return row[0];
  });
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
