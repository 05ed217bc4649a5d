import { unusable } from "../measures/cannot-answer";
import { cellAddress, placeNumber, sheetReference } from "../sheets/address";
import type { Area, Cell, Sheet, Table, Workbook } from "../sheets/workbook";
import type { TableRows } from "./host";
import { movedDown } from "./formula-references";

/** Rows that were put into a table: where, and what stood in the table and in those cells before. */
export interface Growth {
  readonly table: string;
  /** Of the first new row, counted from the heading row. */
  readonly offset: number;
  readonly rows: number;
  readonly rowsBefore: number;
  readonly cellsBefore: readonly Cell[];
  readonly cellsAfter: readonly Cell[];
}

/**
 * Adds rows at the end of a table, or in the blank row an empty table has to have. New rows look like the row above
 * and carry its formulas. Refuses when something stands in the way below.
 */
export function grown(
  workbook: Workbook,
  name: string,
  rows: TableRows,
): { readonly workbook: Workbook; readonly growth: Growth } {
  const { sheet, table } = tableNamed(workbook, name);
  const headings = headingsOf(table, rows);
  const cells = cellMap(sheet);
  const end = table.area.row + table.area.rows;
  const start = isEmpty(table, cells) ? table.area.row + 1 : end;
  const added = Math.max(0, start + rows.length - end);
  refuseBlocked(sheet, table, added);
  const touched: Area = {
    row: start,
    column: table.area.column,
    rows: rows.length,
    columns: table.area.columns,
  };
  const fresh = rows.flatMap((values, i) =>
    headings.map((heading, c) =>
      newCell(table, cells, start, i, c, values[heading]),
    ),
  );
  const growth: Growth = {
    table: table.name,
    offset: start - table.area.row,
    rows: rows.length,
    rowsBefore: table.area.rows,
    cellsBefore: sheet.cells.filter((cell) => covers(touched, cell)),
    cellsAfter: fresh,
  };
  const grownSheet: Sheet = {
    ...sheet,
    cells: [
      ...sheet.cells.filter((cell) => !covers(touched, cell)),
      ...fresh.filter((cell) => Object.keys(cell).length > 2),
    ],
    tables: sheet.tables.map((t) =>
      t === table
        ? { ...t, area: { ...t.area, rows: t.area.rows + added } }
        : t,
    ),
    validations: sheet.validations.map((v) =>
      reaches(v.area, table, end)
        ? { ...v, area: { ...v.area, rows: v.area.rows + added } }
        : v,
    ),
  };
  return { workbook: withSheet(workbook, sheet, grownSheet), growth };
}

export function tableNamed(
  workbook: Workbook,
  name: string,
): { readonly sheet: Sheet; readonly table: Table } {
  for (const sheet of workbook.sheets)
    for (const table of sheet.tables)
      if (table.name.toLowerCase() === name.toLowerCase())
        return { sheet, table };
  throw unusable(`there is no table ${name} in this workbook`);
}

export const withSheet = (
  workbook: Workbook,
  old: Sheet,
  now: Sheet,
): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => (sheet === old ? now : sheet)),
});

export const covers = (
  area: Area,
  { row, column }: { readonly row: number; readonly column: number },
): boolean =>
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

type CellMap = ReadonlyMap<number, Cell>;

const cellMap = (sheet: Sheet): CellMap =>
  new Map(
    sheet.cells.map((cell) => [placeNumber(cell.row, cell.column), cell]),
  );

/** For each column the spelling of its heading that the rows use. */
function headingsOf(table: Table, rows: TableRows): readonly string[] {
  const given = new Set(rows.flatMap(Object.keys));
  const used = table.columns.map(({ heading }) => {
    const spelt = [...given].find(
      (g) => g.trim().toLowerCase() === heading.trim().toLowerCase(),
    );
    if (spelt !== undefined) given.delete(spelt);
    return spelt ?? heading;
  });
  const [stray] = given;
  if (stray !== undefined)
    throw unusable(`the table ${table.name} has no column "${stray}"`);
  return used;
}

/** Whether the only row below the headings holds nothing but formulas. */
function isEmpty(table: Table, cells: CellMap): boolean {
  const { row, column, rows } = table.area;
  if (rows !== 2) return rows < 2;
  return table.columns.every((_, c) => {
    const cell = cells.get(placeNumber(row + 1, column + c));
    return (
      cell?.formula !== undefined ||
      cell?.value === undefined ||
      cell.value === null ||
      cell.value === ""
    );
  });
}

function newCell(
  table: Table,
  cells: CellMap,
  start: number,
  index: number,
  offset: number,
  value: TableRows[number][string] | undefined,
): Cell {
  const row = start + index;
  const column = table.area.column + offset;
  const own = cells.get(placeNumber(row, column));
  const above = start - 1 > table.area.row ? start - 1 : start;
  const model = cells.get(placeNumber(above, column));
  const style = own?.style ?? model?.style;
  const formula =
    value === undefined
      ? (table.columns[offset]?.formula ??
        (model?.formula && movedDown(model.formula, row - above)))
      : undefined;
  return {
    row,
    column,
    ...(formula === undefined ? {} : { formula }),
    ...(value === undefined || value === null ? {} : { value }),
    ...(style === undefined ? {} : { style }),
  };
}

function refuseBlocked(sheet: Sheet, table: Table, added: number): void {
  const way: Area = {
    ...table.area,
    row: table.area.row + table.area.rows,
    rows: added,
  };
  const inTheWay =
    sheet.cells.find((cell) => covers(way, cell) && holds(cell)) ??
    [...sheet.merges, ...sheet.tables.map((t) => t.area)].find((area) =>
      overlap(area, way),
    );
  if (inTheWay)
    throw unusable(
      `the table ${table.name} cannot grow by ${added} rows: ${sheetReference(sheet.name)}!${cellAddress(inTheWay.row, inTheWay.column)} below it is in use`,
    );
}

const holds = (cell: Cell): boolean =>
  cell.formula !== undefined ||
  cell.note !== undefined ||
  (cell.value !== undefined && cell.value !== null && cell.value !== "");

export const overlap = (a: Area, b: Area): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** A validation that ends with the table's last row goes on with it. */
const reaches = (area: Area, table: Table, end: number): boolean =>
  area.row + area.rows === end &&
  area.row > table.area.row &&
  area.column >= table.area.column &&
  area.column + area.columns <= table.area.column + table.area.columns;
