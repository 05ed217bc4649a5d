import { linesOf, roomFor } from "../column-room";
import { look } from "../looks";
import type { Sheet } from "../workbook";

const HEADING = look("heading").fill;

/** Height of a line of text in points. */
const LINE = 15;

/** The sheet with columns wide enough and headings high enough for texts that have grown longer. */
export function withRoom(sheet: Sheet): Sheet {
  const widths: Record<number, number> = { ...sheet.widths };
  for (const { column, value, style } of sheet.cells) {
    // The heading of a block runs over into its own empty cells.
    if (typeof value !== "string" || style?.fill === HEADING) continue;
    const room = roomFor(column, value, style, column === 0 ? 44 : 24);
    if (room !== undefined)
      widths[column] = Math.max(widths[column] ?? 0, room);
  }
  const heights: Record<number, number> = { ...sheet.heights };
  for (const { row, column, value, style } of sheet.cells)
    if (typeof value === "string" && style?.wrap) {
      const lines = linesOf(value, (widths[column] ?? 10) - 1, style);
      if (lines > 1) heights[row] = Math.max(heights[row] ?? 0, lines * LINE);
    }
  return { ...sheet, widths, heights };
}
