import type { Area } from "../../../sheets/workbook";

const CELL = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})$/;

/** "B4", "$B$4" or "B4:C9" as an area; undefined when it is no address. */
export function readAreaAddress(text: string): Area | undefined {
  const [from, to, more] = text.split(":");
  const first = cell(from ?? "");
  const last = to === undefined ? first : cell(to);
  if (!first || !last || more !== undefined) return undefined;
  const row = Math.min(first.row, last.row);
  const column = Math.min(first.column, last.column);
  return {
    row,
    column,
    rows: Math.abs(last.row - first.row) + 1,
    columns: Math.abs(last.column - first.column) + 1,
  };
}

function cell(
  text: string,
): { readonly row: number; readonly column: number } | undefined {
  const match = CELL.exec(text);
  if (!match) return undefined;
  const column = [...(match[1] ?? "").toUpperCase()].reduce(
    (n, letter) => n * 26 + letter.charCodeAt(0) - 64,
    0,
  );
  const row = Number(match[2]);
  if (row < 1 || row > 1_048_576 || column > 16_384) return undefined;
  return { row: row - 1, column: column - 1 };
}
