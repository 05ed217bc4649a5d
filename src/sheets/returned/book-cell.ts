import { bookTables } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { listed } from "../../book/finding";
import { sameName } from "../../book/keys";
import { termNamed } from "../../book/named-value";
import type { Column, Table } from "../../book/table";
import type { CellTerm } from "../../terms/term";
import type { Stored } from "../workbook";
import type { Origin } from "./origins";

/** One typed cell of the book, with the term that says what may stand in it. */
export interface BookCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly heading: string;
  readonly holds: Stored;
  readonly term: CellTerm;
  /** Its row says the unit, and another copy of the figure may be in another. */
  readonly hasOwnUnit: boolean;
}

/** The cell an origin stands for in the open book, or the sentence that says why there is none. */
export function bookCell(
  contents: readonly Contents[],
  origin: Extract<Origin, { readonly in: "table" }>,
  /** Rows that hold only from a later day do not count. */
  day: number,
): BookCell | { readonly why: string } {
  const table: Table = bookTables[origin.table];
  const given = contentsOf(contents, table);
  if (!given) return { why: `the open book has no table ${table.name}` };
  const at = (key: string): number => {
    const column = table.columns[key];
    return column ? columnAt(given.headings, column) : -1;
  };
  const column = table.columns[origin.column];
  const c = at(origin.column);
  if (!column || c < 0)
    return {
      why: `the table ${table.name} has no column ${column?.heading ?? origin.column}`,
    };
  if (column.formula !== undefined)
    return {
      why: `${column.heading} in ${table.sheet} is worked out, not typed`,
    };
  const wanted = Object.entries(origin.row);
  const rows = [...given.rows.keys()].filter((r) =>
    wanted.every(
      ([key, value]) =>
        sameName(given.rows[r]?.[at(key)] ?? "") === sameName(value),
    ),
  );
  const words = listed(wanted.map(([, value]) => value));
  const one = onlyRow(given, rows, origin, at, day);
  if ("count" in one)
    return {
      why:
        one.count === 0
          ? `${table.sheet} has no row for ${words}${origin.newestBy === undefined ? "" : " that holds by now; enter one there with the day it holds from"}`
          : `${table.sheet} has ${one.count} rows for ${words}, and nothing says which is meant`,
    };
  return {
    sheet: given.sheet,
    row: given.row + 1 + one.row,
    column: given.column + c,
    heading: column.heading,
    holds: given.rows[one.row]?.[c] ?? null,
    term: termOf(column, given.rows[one.row]?.[0]),
    hasOwnUnit: column.byName !== undefined,
  };
}

const termOf = (column: Column, name: unknown): CellTerm =>
  (column.byName && termNamed(column.byName, name)) ?? column.term;

function onlyRow(
  given: Contents,
  rows: readonly number[],
  { newestBy }: { readonly newestBy?: string },
  at: (key: string) => number,
  day: number,
): { readonly row: number } | { readonly count: number } {
  const from = (r: number): number => {
    const value = newestBy === undefined ? 0 : given.rows[r]?.[at(newestBy)];
    return typeof value === "number" ? value : Infinity;
  };
  const inForce = rows.filter((r) => from(r) <= day);
  const newest = Math.max(...inForce.map(from));
  const found = inForce.filter((r) => from(r) === newest);
  const [row] = found;
  return row !== undefined && found.length === 1
    ? { row }
    : { count: found.length };
}
