import { unusable } from "../../measures/cannot-answer";
import { cellAddress, sheetReference } from "../address";
import type { Area } from "../workbook";

export interface LedgerRange extends Area {
  readonly sheet: string;
}

/** What can be pointed at: sheets with what they hold, and tables. */
export interface InWorkbook {
  readonly sheets: readonly { readonly name: string; readonly used?: Area }[];
  readonly tables: readonly {
    readonly name: string;
    readonly sheet: string;
    readonly area: Area;
  }[];
}

/** Reads "Sheet!A3:L200", "'My sheet'!A3:L200", a table's name or, where what a sheet holds is known, the sheet's name. */
export function ledgerRange(asked: string, within: InWorkbook): LedgerRange {
  const text = asked.trim();
  const mark = text.lastIndexOf("!");
  if (mark < 0) {
    const table = within.tables.find(({ name }) => same(name, text));
    if (table) return { sheet: table.sheet, ...table.area };
    const sheet = within.sheets.find(({ name }) => same(name, unquoted(text)));
    if (sheet?.used) return { sheet: sheet.name, ...sheet.used };
    throw unusable(
      `"${text}" is no table and no range; write it as Sheet!A3:L200, or name a table`,
    );
  }
  const name = unquoted(text.slice(0, mark));
  const sheet = within.sheets.find((one) => same(one.name, name));
  if (!sheet)
    throw unusable(
      `there is no sheet "${name}"; there are ${within.sheets.map((one) => one.name).join(", ")}`,
    );
  const area = areaIn(text.slice(mark + 1));
  if (!area || area.rows < 2 || area.columns < 2)
    throw unusable(
      `"${text.slice(mark + 1)}" is no range of several rows and columns; write it as Sheet!A3:L200`,
    );
  return { sheet: sheet.name, ...area };
}

export const rangeText = ({
  sheet,
  row,
  column,
  rows,
  columns,
}: LedgerRange): string =>
  `${/^\w+$/.test(sheet) ? sheet : sheetReference(sheet)}!${cellAddress(row, column)}:${cellAddress(row + rows - 1, column + columns - 1)}`;

const RANGE = /^\$?([a-z]{1,3})\$?(\d{1,7}):\$?([a-z]{1,3})\$?(\d{1,7})$/i;

function areaIn(text: string): Area | undefined {
  const found = RANGE.exec(text.trim());
  if (!found) return undefined;
  const [left, right] = [columnOf(found[1]), columnOf(found[3])];
  const [top, bottom] = [Number(found[2]) - 1, Number(found[4]) - 1];
  return {
    row: Math.min(top, bottom),
    column: Math.min(left, right),
    rows: Math.abs(bottom - top) + 1,
    columns: Math.abs(right - left) + 1,
  };
}

const columnOf = (letters = ""): number =>
  [...letters.toUpperCase()].reduce(
    (n, letter) => n * 26 + letter.charCodeAt(0) - 64,
    0,
  ) - 1;

const unquoted = (name: string): string =>
  name
    .trim()
    .replace(/^'(.*)'$/, "$1")
    .replace(/''/g, "'");

const same = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().toLowerCase();
