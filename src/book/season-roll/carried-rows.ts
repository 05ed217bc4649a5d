import { isBlank } from "../../functions/read-cell";
import type { DaySerial } from "../../measures/quantity";
import { bookTables, type TableKey } from "../book";
import {
  type CellContent,
  columnAt,
  type Contents,
  placeOf,
} from "../contents";
import type { Column, Table } from "../table";
import type { CarriedDraw } from "./syrup-kept";

type Placed = readonly { readonly place: string }[];

/** The rows of a table that are kept, in their order, and those that could not be read: nothing is lost unsaid. */
export function onlyRows(
  contents: Contents,
  key: TableKey,
  read: Placed,
  kept: Placed,
): { readonly contents: Contents; readonly unread: readonly string[] } {
  const known = new Set(read.map(({ place }) => place));
  const wanted = new Set(kept.map(({ place }) => place));
  const unread: string[] = [];
  const rows = contents.rows.filter((row, i) => {
    const place = placeOf(contents, i);
    if (wanted.has(place)) return true;
    if (known.has(place) || isBlankRow(bookTables[key], contents, row))
      return false;
    unread.push(place);
    return true;
  });
  return { contents: { ...ownPlace(contents), rows }, unread };
}

/** In the new book rows stand on its own sheets, no longer in a CSV file's lines. */
export function ownPlace({ from: _, ...contents }: Contents): Contents {
  return contents;
}

/** Lot use with one draw in front for each carried lot and barrel. */
export function withCarriedDraws(
  contents: Contents,
  draws: readonly CarriedDraw[],
  day: DaySerial,
  season: number,
): Contents {
  const { columns } = bookTables.lotUse;
  const rows = draws.map(({ from, pounds }) =>
    rowOf(contents, [
      [columns.date, day],
      [columns.from, from],
      [columns.what, "used before the season"],
      [columns.to, usedBefore(season)],
      [columns.pounds, pounds],
    ]),
  );
  return { ...contents, rows: [...rows, ...contents.rows] };
}

/** What a carried draw says it went to. */
export const usedBefore = (season: number): string => `used before ${season}`;

/** A row like another with some cells changed; the new cells of columns the contents lack are left out. */
export function rowOf(
  contents: Contents,
  cells: readonly (readonly [Column, CellContent])[],
  like: readonly CellContent[] = contents.headings.map(() => null),
): readonly CellContent[] {
  const row = contents.headings.map((_, i) => like[i] ?? null);
  for (const [column, content] of cells) {
    const at = columnAt(contents.headings, column);
    if (at >= 0) row[at] = content;
  }
  return row;
}

/** Nothing was entered in the row; its own formulas may still show something. */
function isBlankRow(
  table: Table,
  contents: Contents,
  row: readonly CellContent[],
): boolean {
  const calculated = Object.values(table.columns)
    .filter(({ formula }) => formula !== undefined)
    .map((column) => columnAt(contents.headings, column));
  return row.every((cell, i) => calculated.includes(i) || isBlank(cell));
}
