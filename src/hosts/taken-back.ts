import { unusable, type CannotAnswer } from "../measures/cannot-answer";
import type { Cell, Sheet, Workbook } from "../sheets/workbook";
import type { Change } from "./host";
import { emptied, type Filled } from "./filled-cells";
import { covers, tableNamed, withSheet, type Growth } from "./table-growth";

/** A change as it was carried out, and the workbook just after it. */
export interface Done {
  readonly change: Change;
  readonly growths: readonly Growth[];
  readonly fills: readonly Filled[];
  readonly after: Workbook;
}

/**
 * The workbook as it now is, without what the change put in; everything done since stays. Refuses when somebody has
 * since typed over what the change put in.
 */
export function takenBack(workbook: Workbook, done: Done): Workbook {
  let now = workbook;
  for (const growth of [...done.growths].reverse()) now = shrunk(now, growth);
  for (const fill of [...done.fills].reverse())
    now = emptied(now, fill, filledText);
  const added = new Set(done.change.addSheets.map((sheet) => sheet.name));
  for (const name of added) refuseTypedOver(now, done.after, name);
  const sheets = now.sheets.filter((sheet) => !added.has(sheet.name));
  if (sheets.length === 0) throw onlyOneLeft();
  const names = new Set(done.change.names.map(({ name }) => name));
  return {
    ...now,
    sheets,
    names: now.names.filter(({ name }) => !names.has(name)),
  };
}

export const rowsChanged = (table: string): CannotAnswer =>
  unusable(
    `the rows added to ${table} have been changed since, so they stay; delete them by hand if they are not wanted`,
  );

export const typedIn = (sheet: string): CannotAnswer =>
  unusable(
    `the sheet "${sheet}" has been typed in since it was added, so it stays; delete it by hand if it is not wanted`,
  );

export const onlyOneLeft = (): CannotAnswer =>
  unusable("the added sheet is the only one left, so it has to stay");

function shrunk(workbook: Workbook, growth: Growth): Workbook {
  const { sheet, table } = tableNamed(workbook, growth.table);
  const start = table.area.row + growth.offset;
  const end = table.area.row + table.area.rows;
  const touched = { ...table.area, row: start, rows: growth.rows };
  const typed = inputs(sheet.cells.filter((cell) => covers(touched, cell)));
  if (
    end !== Math.max(start + growth.rows, table.area.row + growth.rowsBefore) ||
    typed !== inputs(moved(growth.cellsAfter, growth, start))
  )
    throw rowsChanged(growth.table);
  return withSheet(workbook, sheet, {
    ...sheet,
    cells: [
      ...sheet.cells.filter((cell) => !covers(touched, cell)),
      ...moved(growth.cellsBefore, growth, start),
    ],
    tables: sheet.tables.map((t) =>
      t === table ? { ...t, area: { ...t.area, rows: growth.rowsBefore } } : t,
    ),
    validations: sheet.validations.map((v) => {
      const past =
        v.area.row + v.area.rows - (table.area.row + growth.rowsBefore);
      return past > 0 && covers(table.area, v.area)
        ? { ...v, area: { ...v.area, rows: v.area.rows - past } }
        : v;
    }),
  });
}

/** Rows may have been inserted above the table since. */
const moved = (
  cells: readonly Cell[],
  growth: Growth,
  start: number,
): readonly Cell[] => {
  const first = growth.cellsAfter[0]?.row ?? start;
  return cells.map((cell) => ({ ...cell, row: cell.row - first + start }));
};

/** What a person could have typed into these cells, as one comparable text. */
export const inputs = (cells: readonly Cell[]): string =>
  JSON.stringify(
    cells
      .filter(
        (cell) =>
          cell.formula === undefined &&
          !cell.spilled &&
          (cell.value ?? "") !== "",
      )
      .sort((a, b) => a.row - b.row || a.column - b.column)
      .map((cell) => [cell.row, cell.column, cell.value]),
  );

/** What tells whether cells that were filled are still as they were put: what could be typed, and how many formulas. */
export const filledText = (cells: readonly Cell[]): string =>
  `${inputs(cells)} ${cells.filter(({ formula }) => formula !== undefined).length}`;

function refuseTypedOver(now: Workbook, after: Workbook, name: string): void {
  const typed = (workbook: Workbook): string | undefined => {
    const sheet = workbook.sheets.find((s: Sheet) => s.name === name);
    return sheet && inputs(sheet.cells);
  };
  const found = typed(now);
  if (found !== undefined && found !== typed(after)) throw typedIn(name);
}
