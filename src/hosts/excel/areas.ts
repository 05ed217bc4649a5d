import { cellAddress, columnLetters } from "../../sheets/address";
import type { Area, Cell } from "../../sheets/workbook";

/** "B4" or "B4:D9". */
export const addressOf = (area: Area): string => {
  const from = cellAddress(area.row, area.column);
  const to = cellAddress(
    area.row + area.rows - 1,
    area.column + area.columns - 1,
  );
  return from === to ? from : `${from}:${to}`;
};

/** "B:B" or "3:3", for widths and heights. */
export const wholeColumn = (column: number): string =>
  `${columnLetters(column)}:${columnLetters(column)}`;
export const wholeRow = (row: number): string => `${row + 1}:${row + 1}`;

type Place = Pick<Cell, "row" | "column">;

/** Cells as rectangles, side by side first; `stacks` also joins equal ones below each other. */
export function rectangles(
  places: readonly Place[],
  joins: { readonly sideways: boolean; readonly stacks: boolean },
): readonly Area[] {
  const strips: Mutable<Area>[] = [];
  for (const { row, column } of [...places].sort(inReadingOrder)) {
    const last = strips.at(-1);
    if (
      joins.sideways &&
      last?.row === row &&
      last.column + last.columns === column
    )
      last.columns += 1;
    else strips.push({ row, column, rows: 1, columns: 1 });
  }
  if (!joins.stacks) return strips;
  const open = new Map<string, Mutable<Area>>();
  const areas: Mutable<Area>[] = [];
  for (const strip of strips) {
    const key = `${strip.column},${strip.columns}`;
    const above = open.get(key);
    if (above && above.row + above.rows === strip.row) above.rows += 1;
    else {
      open.set(key, strip);
      areas.push(strip);
    }
  }
  return areas;
}

/** Addresses joined by commas, in as few texts as the vendor's limit of 8192 characters allows. */
export function addressLists(addresses: readonly string[]): readonly string[] {
  const lists: string[] = [];
  for (const address of addresses) {
    const last = lists.at(-1);
    if (last !== undefined && last.length + 1 + address.length <= longest)
      lists[lists.length - 1] = `${last},${address}`;
    else lists.push(address);
  }
  return lists;
}

const longest = 8000;

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const inReadingOrder = (a: Place, b: Place): number =>
  a.row - b.row || a.column - b.column;
