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

/**
 * Reads "Sheet!A3:L200", "'My sheet'!A3:L200", a table's name or, where what a sheet holds is known, the sheet's name.
 * Refuses (#VALUE!) what is none of these, what lies outside a sheet, and cells that are known to be all blank.
 */
export function ledgerRange(asked: string, within: InWorkbook): LedgerRange {
  const text = asked.trim();
  const mark = text.lastIndexOf("!");
  if (mark < 0) {
    const table = within.tables.find(({ name }) => same(name, text));
    if (table) return { sheet: table.sheet, ...table.area };
    const sheet = within.sheets.find(({ name }) => same(name, unquoted(text)));
    if (sheet?.used)
      return onlyUsed(
        { sheet: sheet.name, ...wholeOf(sheet.used) },
        sheet.used,
      );
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
  const range = { sheet: sheet.name, ...area };
  if (sheet.used) return onlyUsed(range, sheet.used);
  if (area.rows > MOST_ROWS)
    throw unusable(
      `"${text.slice(mark + 1)}" is of ${area.rows.toLocaleString("en-US")} rows, more than the ${MOST_ROWS.toLocaleString("en-US")} read here; name the rows the ledger uses`,
    );
  return range;
}

const MOST_ROWS = 200_000;
const SHEET_ROWS = 1_048_576;
const SHEET_COLUMNS = 16_384;

const wholeOf = ({ row, column, rows, columns }: Area): Area => ({
  row: 0,
  column: 0,
  rows: row + rows,
  columns: column + columns,
});

/** Without the rows below the last that is used; refuses cells that are all blank. */
function onlyUsed(range: LedgerRange, used: Area): LedgerRange {
  const [bottom, right] = [used.row + used.rows, used.column + used.columns];
  if (used.rows === 0 || used.columns === 0)
    throw unusable(`the sheet "${range.sheet}" is blank`);
  if (
    range.row >= bottom ||
    range.column >= right ||
    range.row + range.rows <= used.row ||
    range.column + range.columns <= used.column
  )
    throw unusable(
      `${rangeText(range)} is blank; what the sheet holds is in ${rangeText({ sheet: range.sheet, ...used })}`,
    );
  return { ...range, rows: Math.min(range.rows, bottom - range.row) };
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
  if (
    Math.min(top, bottom) < 0 ||
    Math.max(top, bottom) >= SHEET_ROWS ||
    Math.max(left, right) >= SHEET_COLUMNS
  )
    throw unusable(
      `"${text.trim()}" lies outside a sheet, which has rows 1 to ${SHEET_ROWS.toLocaleString("en-US")} and columns A to XFD`,
    );
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
