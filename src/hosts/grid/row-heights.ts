import type { Cell, Sheet } from "../../sheets/workbook";
import { columnPixels, plainColumn, plainRow, rowPixels } from "./sizes";

const plainSize = 10;
/** Of a proportional sans-serif face, as a share of its size; a little generous, for bold and capitals. */
const letterWidth = 0.53;
const lineHeight = 1.3;
const room = 3;

/**
 * Pixels for the rows whose text needs more than one plain line and that have no height of their own. An estimate:
 * the grid fits rows only after an edit.
 */
export function neededHeights(sheet: Sheet): Readonly<Record<number, number>> {
  const needed: Record<number, number> = {};
  for (const cell of sheet.cells) {
    if (sheet.heights[cell.row] !== undefined) continue;
    const height = textHeight(sheet, cell);
    if (height > Math.max(rowPixels(plainRow), needed[cell.row] ?? 0))
      needed[cell.row] = Math.ceil(height);
  }
  return needed;
}

function textHeight(sheet: Sheet, cell: Cell): number {
  if (typeof cell.value !== "string" && typeof cell.value !== "number")
    return 0;
  const size = rowPixels(cell.style?.size ?? plainSize);
  const lines =
    typeof cell.value === "string" && cell.style?.wrap
      ? lineCount(cell.value, widthOf(sheet, cell) / (size * letterWidth))
      : 1;
  if (lines === 1 && size <= rowPixels(plainSize)) return 0;
  return lines * size * lineHeight + room;
}

function widthOf(sheet: Sheet, { row, column }: Cell): number {
  const merge = sheet.merges.find((m) => m.row === row && m.column === column);
  const columns = merge?.columns ?? 1;
  return Array.from({ length: columns }, (_, c) =>
    columnPixels(sheet.widths[column + c] ?? plainColumn),
  ).reduce((sum, width) => sum + width, -4);
}

function lineCount(text: string, letters: number): number {
  return text
    .split("\n")
    .reduce((sum, paragraph) => sum + paragraphLines(paragraph, letters), 0);
}

function paragraphLines(paragraph: string, letters: number): number {
  let lines = 1;
  let used = 0;
  for (const word of paragraph.split(" ")) {
    if (used > 0 && used + word.length > letters) {
      lines += 1;
      used = 0;
    }
    lines += Math.max(0, Math.ceil(word.length / letters) - 1);
    used += word.length + 1;
  }
  return lines;
}
