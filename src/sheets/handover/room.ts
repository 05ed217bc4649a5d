import { linesOf, roomFor } from "../column-room";
import type { Cell, Sheet } from "../workbook";
import { isBlank } from "./fates";
import { pagesAcross } from "./printed";

/** Widest a column of a copy is made, in letters: the first holds the labels; on several pages side by side there is more room. */
const MOST = { first: 40, other: 22, otherAcross: 44 } as const;
const LEAST = { first: 24, other: 9 } as const;

/** Wide enough for what stands in each column, within reason. */
export function widthsOf(cells: readonly Cell[]): Sheet["widths"] {
  const widths = widthsUpTo(cells, MOST.other);
  return pagesAcross(widths) > 1 ? widthsUpTo(cells, MOST.otherAcross) : widths;
}

function widthsUpTo(cells: readonly Cell[], most: number): Sheet["widths"] {
  const widths: Record<number, number> = {};
  const stands = filledIn(cells);
  for (const { row, column, value, style } of cells) {
    const isFirst = column === 0;
    // A remark runs over into empty cells only.
    const look = stands(row, column + 1) ? { ...style, italic: false } : style;
    const room = isBlank(value)
      ? 0
      : (roomFor(column, value, look, isFirst ? MOST.first : most) ?? 0);
    widths[column] = Math.max(
      widths[column] ?? (isFirst ? LEAST.first : LEAST.other),
      room,
    );
  }
  return widths;
}

const LINE_POINTS = 14.5;

/** Words that would be cut off by what stands beside them break over lines, and rows are as high as their words need. */
export function withRoom(
  cells: readonly Cell[],
  widths: Sheet["widths"],
  given: Sheet["heights"],
): Pick<Sheet, "cells" | "heights"> {
  const stands = filledIn(cells);
  const heights: Record<number, number> = { ...given };
  return {
    cells: cells.map((cell) => {
      const { row, column, value, style } = cell;
      if (typeof value !== "string") return cell;
      const letters =
        (widths[column] ?? LEAST.other) - 1 - (style?.indent ?? 0);
      const isCut = value.length > letters && stands(row, column + 1);
      if (!style?.wrap && !isCut) return cell;
      const lines = linesOf(value, letters, style);
      if (lines > 1)
        heights[row] = Math.max(heights[row] ?? 0, lines * LINE_POINTS + 2);
      return isCut ? { ...cell, style: { ...style, wrap: true } } : cell;
    }),
    heights,
  };
}

/** Whether anything stands in a cell, be it a formula that shows nothing yet. */
function filledIn(
  cells: readonly Cell[],
): (row: number, column: number) => boolean {
  const filled = new Set(
    cells
      .filter(({ value, formula }) => formula !== undefined || !isBlank(value))
      .map(({ row, column }) => `${row},${column}`),
  );
  return (row, column) => filled.has(`${row},${column}`);
}
