import { cellAddress } from "../../sheets/address";
import type { Area } from "../../sheets/workbook";

export const rowLimit = 1_048_576;
export const columnLimit = 16_384;

/** "B2:C9", or "B2" for one cell. */
export function areaReference({ row, column, rows, columns }: Area): string {
  const first = cellAddress(row, column);
  return rows === 1 && columns === 1
    ? first
    : `${first}:${cellAddress(row + rows - 1, column + columns - 1)}`;
}

/** The area of "B2:C9", "$B$2", "B:C" or "2:9"; throws an ordinary error for anything else. */
export function areaOf(reference: string): Area {
  const [from, to = from] = reference.replace(/\$/g, "").split(":");
  const start = cornerOf(from as string);
  const end = cornerOf(to as string);
  const row = start.row ?? 0;
  const column = start.column ?? 0;
  return {
    row,
    column,
    rows: (end.row ?? rowLimit - 1) - row + 1,
    columns: (end.column ?? columnLimit - 1) - column + 1,
  };
}

/** 0 for "A", 26 for "AA". */
export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce(
    (sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
    0,
  ) - 1;

function cornerOf(text: string): {
  readonly row?: number;
  readonly column?: number;
} {
  const found = /^([A-Za-z]{0,3})(\d{0,7})$/.exec(text);
  if (!found || text === "") throw new Error(`"${text}" is no cell address`);
  const [, letters, digits] = found;
  return {
    ...(letters ? { column: columnNumber(letters) } : {}),
    ...(digits ? { row: Number(digits) - 1 } : {}),
  };
}
