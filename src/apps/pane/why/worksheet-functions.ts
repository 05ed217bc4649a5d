import type { Stored } from "../../../sheets/workbook";
import type { Value } from "./received";

/**
 * The few plain worksheet functions our own sheets put inside our calls, so that the arithmetic can be shown.
 * Anything else, and anything unusual, is undefined: the pane then shows the formula's text and claims nothing.
 */
export function plainFunction(
  name: string,
  args: readonly Value[],
): { readonly value: Value } | undefined {
  const work = known[name.toUpperCase()];
  const value = work?.(args);
  return value === undefined ? undefined : { value };
}

const known: Readonly<
  Record<string, (args: readonly Value[]) => Value | undefined>
> = {
  INDEX: ([cells, row, column]) => {
    const rows = rowsOf(cells);
    const r = Number(row);
    const c = column === undefined || column === null ? 1 : Number(column);
    if (!Number.isInteger(r) || !Number.isInteger(c) || r < 1 || c < 1)
      return undefined;
    const isWide = rows.length === 1 && column === undefined;
    return (isWide ? rows[0]?.[r - 1] : rows[r - 1]?.[c - 1]) ?? undefined;
  },
  MATCH: ([wanted, cells, how]) => {
    if (how !== 0 || typeof wanted === "object" || wanted === undefined)
      return undefined;
    const found = rowsOf(cells)
      .flat()
      .findIndex((cell) => isSame(cell, wanted));
    return found < 0 ? { error: "#N/A" } : found + 1;
  },
  SUM: (args) => numbersOf(args)?.reduce((a, b) => a + b, 0),
  MIN: (args) => bound(args, Math.min),
  MAX: (args) => bound(args, Math.max),
};

function bound(
  args: readonly Value[],
  pick: (...numbers: number[]) => number,
): number | undefined {
  const numbers = numbersOf(args);
  return numbers && (numbers.length === 0 ? 0 : pick(...numbers));
}

/** Numbers inside ranges; text and blanks there are passed over, an error stops everything. */
function numbersOf(args: readonly Value[]): readonly number[] | undefined {
  const cells = args.flatMap((arg) => rowsOf(arg).flat());
  if (cells.some((cell) => typeof cell === "object" && cell !== null))
    return undefined;
  return cells.filter((cell) => typeof cell === "number");
}

const rowsOf = (value: Value | undefined): readonly (readonly Stored[])[] =>
  Array.isArray(value)
    ? (value as readonly (readonly Stored[])[])
    : [[(value as Stored | undefined) ?? null]];

const isSame = (cell: Stored, wanted: Value): boolean =>
  typeof cell === "string" && typeof wanted === "string"
    ? cell.toLowerCase() === wanted.toLowerCase()
    : cell === wanted;
