import { cellAddress } from "../../../src/sheets/address";
import type { Area } from "../../../src/sheets/workbook";
import { badArgument } from "./wire-object";

const allRows = 1_048_576;
const allColumns = 16_384;
/** The vendor's own limit of an address that names several areas. */
const longestAddress = 8192;

/** "A1:B2,C3", "D:E" or "3:4" as areas; a sheet before "!" is left aside. */
export function areasOf(address: string): readonly Area[] {
  if (address.length > longestAddress)
    throw badArgument("an address has at most 8192 characters");
  return address.split(",").map((piece) => {
    const plain = piece.replace(/^.*!/, "").replace(/\$/g, "");
    const match = /^([A-Z]{1,3})?(\d+)?(?::([A-Z]{1,3})?(\d+)?)?$/.exec(plain);
    if (!match || plain === "") throw badArgument(`the address ${piece}`);
    const [, column, row, toColumn = column, toRow = row] = match;
    const left = column === undefined ? 0 : columnOf(column);
    const right = toColumn === undefined ? allColumns - 1 : columnOf(toColumn);
    const top = row === undefined ? 0 : Number(row) - 1;
    const bottom = toRow === undefined ? allRows - 1 : Number(toRow) - 1;
    return {
      row: top,
      column: left,
      rows: bottom - top + 1,
      columns: right - left + 1,
    };
  });
}

export function addressOf(area: Area, sheet: string): string {
  const plain = /^[A-Za-z_]\w*$/.test(sheet);
  const prefix = plain ? sheet : `'${sheet.replace(/'/g, "''")}'`;
  const from = cellAddress(area.row, area.column);
  const to = cellAddress(
    area.row + area.rows - 1,
    area.column + area.columns - 1,
  );
  return `${prefix}!${from === to ? from : `${from}:${to}`}`;
}

export const isWholeColumns = (area: Area): boolean => area.rows === allRows;
export const isWholeRows = (area: Area): boolean => area.columns === allColumns;

const columnOf = (letters: string): number =>
  [...letters].reduce((sum, l) => sum * 26 + l.charCodeAt(0) - 64, 0) - 1;
