import { cellAddress } from "../../../sheets/address";
import type { Stored } from "../../../sheets/workbook";
import { tableAt, type Range, type Surroundings } from "./surroundings";

/** How far up a heading is looked for; beyond that it is no heading of this cell any more. */
const REACH = 60;

/**
 * What people call a cell or range: the table's heading and the row's own name, else the text to its left,
 * else the heading above it. Undefined where the sheet says nothing.
 */
export async function labelOf(
  range: Range,
  around: Surroundings,
): Promise<string | undefined> {
  return inTable(range, around) ?? (await onSheet(range, around));
}

function inTable(range: Range, around: Surroundings): string | undefined {
  const table = tableAt(range, around.tables);
  if (!table) return undefined;
  const from = table.headings[range.column - table.column];
  const last = table.headings[range.column - table.column + range.columns - 1];
  const heading = range.columns > 1 ? `${from} to ${last}` : from;
  if (range.rows > 1) return `${table.sheet}, ${heading}`;
  const index = range.row - table.row - 1;
  const key = table.rows[index]?.[0];
  const isKeyItself = range.column === table.column;
  return key === null || key === undefined || isKeyItself
    ? heading
    : `${heading} of ${String(key)}`;
}

async function onSheet(
  range: Range,
  around: Surroundings,
): Promise<string | undefined> {
  const top = Math.max(0, range.row - REACH);
  const cells = await around.host.readArea(
    range.sheet,
    top,
    0,
    range.row - top + 1,
    range.column + 3,
  );
  const own = cells.at(-1) ?? [];
  const above = cells.slice(0, -1);
  const heading = headingOver(above, range.column);
  if (range.rows > 1)
    return (
      heading ?? nearestText(above.map((row) => row[range.column] ?? null))
    );
  if (heading !== undefined) {
    const name = own
      .slice(0, range.column)
      .find((cell) => cell !== null && cell !== "");
    return name === undefined || typeof name === "object"
      ? heading
      : `${String(name)}: ${heading}`;
  }
  return (
    nearestText(own.slice(0, range.column)) ??
    nearestText(above.map((row) => row[range.column] ?? null))
  );
}

/**
 * The column's heading in the block of rows a cell stands in: blocks are parted by blank rows, and a heading row is
 * one of a block's first two and has three texts side by side, which no single labelled figure has.
 */
function headingOver(
  above: readonly (readonly Stored[])[],
  column: number,
): string | undefined {
  const start = above.findLastIndex((row) => row.every(isNothing)) + 1;
  for (const row of above.slice(start, start + 2)) {
    const isHeading = [-2, -1, 0].some((from) =>
      [0, 1, 2].every((step) => isWords(row[column + from + step])),
    );
    const heading = row[column];
    if (isHeading && typeof heading === "string") return heading.trim();
  }
  return undefined;
}

const isNothing = (cell: Stored): boolean => cell === null || cell === "";

const isWords = (cell: Stored | undefined): boolean =>
  typeof cell === "string" && /[A-Za-z]/.test(cell);

/** The last text before the end of a line of cells; a number or formula result in between is passed over. */
function nearestText(cells: readonly Stored[]): string | undefined {
  const found = cells.findLast(isWords);
  return typeof found === "string" ? found.trim() : undefined;
}

/** "B4", "B4:B9", with the sheet's name where it is another one. */
export function addressOf(range: Range, here: string): string {
  const from = cellAddress(range.row, range.column);
  const to = cellAddress(
    range.row + range.rows - 1,
    range.column + range.columns - 1,
  );
  const cells = from === to ? from : `${from}:${to}`;
  return range.sheet === here ? cells : `${range.sheet}, ${cells}`;
}
