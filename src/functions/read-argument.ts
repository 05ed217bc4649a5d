import { unusable } from "../measures/cannot-answer";
import type { CellTerm, OptionalCell, Term } from "../terms/term";
import { isBlank, readCell } from "./read-cell";

type Given = Term & { readonly otherwise?: number | string | undefined };

/** Turns one raw argument into the value its term promises. Blank and required is refused: "needs tare". */
export function readArgument(term: Given, raw: unknown, name: string): unknown {
  const words = name.replace(/_/g, " ");
  if (isBlank(raw)) {
    if (!("otherwise" in term)) throw unusable(`needs ${words}`);
    return term.otherwise === undefined
      ? undefined
      : readArgument(required(term), term.otherwise, name);
  }
  if (term.kind === "rows") return readRows(term.columns, asRows(raw), words);
  if (term.kind === "list")
    return readList(term.of, asRows(raw), "keepBlanks" in term, words);
  return readCell(term, single(raw, words), words);
}

const required = (term: Given): Given => {
  const { otherwise: _, ...rest } = term;
  return rest;
};

function asRows(raw: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(raw)) return [[raw]];
  return raw.every(Array.isArray) ? (raw as unknown[][]) : [raw as unknown[]];
}

function single(raw: unknown, words: string): unknown {
  if (!Array.isArray(raw)) return raw;
  const cells = raw.flat();
  if (cells.length !== 1)
    throw unusable(`${words}: one value is wanted, not ${cells.length} cells`);
  return cells[0];
}

function readList(
  of: CellTerm,
  given: readonly (readonly unknown[])[],
  keepBlanks: boolean,
  words: string,
): readonly unknown[] {
  const wide = given.every((row) => row.length === 1) || given.length === 1;
  if (!wide) throw unusable(`${words}: one column or one row is wanted`);
  const cells = given.flat();
  const first = isHeading([of], cells.slice(0, 1)) && cells.length > 1 ? 1 : 0;
  return cells
    .slice(first)
    .map((cell, i) =>
      isBlank(cell) ? undefined : readCell(of, cell, `${words}, item ${i + 1}`),
    )
    .filter((value) => keepBlanks || value !== undefined);
}

function readRows(
  columns: Readonly<Record<string, CellTerm | OptionalCell>>,
  given: readonly (readonly unknown[])[],
  words: string,
): readonly unknown[] {
  const names = Object.keys(columns);
  const terms = Object.values(columns);
  const needed = terms.filter((t) => !("mayBeBlank" in t)).length;
  const width = Math.max(0, ...given.map((row) => row.length));
  if (width < needed || width > names.length) {
    throw unusable(
      `${words}: ${names.length} columns are wanted (${names.join(", ").replace(/_/g, " ")}), not ${width}`,
    );
  }
  const first =
    given.length > 1 && given[0] !== undefined && isHeading(terms, given[0])
      ? 1
      : 0;
  const records: unknown[] = [];
  for (const [r, row] of given.entries()) {
    if (r < first || row.every(isBlank)) continue;
    records.push(readRecord(names, terms, row, `${words}, row ${r + 1}`));
  }
  return records;
}

function readRecord(
  names: readonly string[],
  terms: readonly (CellTerm | OptionalCell)[],
  row: readonly unknown[],
  where: string,
): unknown {
  const record: Record<string, unknown> = {};
  for (const [c, name] of names.entries()) {
    const term = terms[c];
    const cell = row[c];
    if (!term) continue;
    if (!isBlank(cell))
      record[name] = readCell(
        term,
        cell,
        `${where}, ${name.replace(/_/g, " ")}`,
      );
    else if ("mayBeBlank" in term) record[name] = undefined;
    else throw unusable(`${where}: needs ${name.replace(/_/g, " ")}`);
  }
  return record;
}

/** A first row that is all text where numbers belong is a heading. */
function isHeading(
  terms: readonly CellTerm[],
  row: readonly unknown[],
): boolean {
  const numeric = terms.map(
    (t) => !["text", "choice", "yes or no"].includes(t.kind),
  );
  if (!numeric.some((n, c) => n && c < row.length)) return false;
  return row.every((cell, c) => {
    if (!numeric[c]) return typeof cell === "string" || isBlank(cell);
    return (
      typeof cell === "string" &&
      /[A-Za-z]/.test(cell) &&
      !/^\s*[-+]?\d/.test(cell)
    );
  });
}
