import { ICommandService, type ICellData, type Nullable } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { Engine } from "./engine";
import { LiveTables, ownTrigger, type LiveTable } from "./live-tables";
import { valueFromGrid } from "./stored-value";

interface Written {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly trigger?: string;
  readonly cellValue?: Readonly<
    Record<string, Nullable<Readonly<Record<string, Nullable<ICellData>>>>>
  >;
}

/** The grid's engine finds a column by its heading only when the heading holds nothing but these. */
const readableHeading = /^[A-Za-z0-9 $%&*+\-./;@_°]+$/;

/**
 * Keeps tables true to what is typed at their edges: a row typed just below one belongs to it, and a heading typed
 * over is the column's new name. A heading that is blank, taken or unreadable is put back as it was.
 */
export function keepTables(engine: Engine, bookId: () => string): void {
  /** Rows that joined a table by typing, to be given up again when the typing is undone. */
  const joined = new Set<string>();
  engine.univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted((command, options) => {
      if (command.id !== SetRangeValuesMutation.id) return;
      const written = command.params as Written;
      const byPerson =
        options?.onlyLocal !== true &&
        written.trigger !== ownTrigger &&
        written.unitId === bookId();
      if (!byPerson || !written.cellValue) return;
      const tables = new LiveTables(engine, written.unitId);
      for (const table of tables.on(written.subUnitId)) {
        keepHeadings(tables, table, written);
        giveUp(tables, table, joined);
        takeIn(tables, table, written, joined);
      }
    });
}

function keepHeadings(
  tables: LiveTables,
  table: LiveTable,
  written: Written,
): void {
  const { startRow, startColumn, endColumn } = table.getRange();
  const typed = written.cellValue?.[startRow];
  if (!typed) return;
  for (let column = startColumn; column <= endColumn; column += 1) {
    if (!(column in typed)) continue;
    const index = column - startColumn;
    const shown = String(
      valueFromGrid(tables.raw(written.subUnitId, startRow, column)) ?? "",
    ).trim();
    const known = table.getColumnNameByIndex(index);
    if (shown === known) continue;
    const others = Array.from({ length: table.getColumnsCount() }, (_, i) =>
      i === index ? "" : table.getColumnNameByIndex(i).toLowerCase(),
    );
    const usable =
      readableHeading.test(shown) && !others.includes(shown.toLowerCase());
    if (usable) tables.rename(table, index, shown);
    else tables.restoreHeading(table, index);
  }
}

function takeIn(
  tables: LiveTables,
  table: LiveTable,
  written: Written,
  joined: Set<string>,
): void {
  for (;;) {
    const { endRow } = table.getRange();
    const next = endRow + 1;
    if (!written.cellValue?.[next]) return;
    if (!holdsTyping(tables, table, next) || isTaken(tables, table, next))
      return;
    tables.grow(table);
    joined.add(`${table.getId()},${next}`);
  }
}

function giveUp(
  tables: LiveTables,
  table: LiveTable,
  joined: Set<string>,
): void {
  for (;;) {
    const { endRow } = table.getRange();
    const key = `${table.getId()},${endRow}`;
    if (!joined.has(key) || holdsTyping(tables, table, endRow)) return;
    joined.delete(key);
    tables.shrink(table);
  }
}

/** Whether anything but formulas stands in the table's columns of that row. */
function holdsTyping(
  tables: LiveTables,
  table: LiveTable,
  row: number,
): boolean {
  const { startColumn, endColumn } = table.getRange();
  for (let column = startColumn; column <= endColumn; column += 1) {
    const cell = tables.raw(table.getSubunitId(), row, column);
    const value = valueFromGrid(cell) ?? "";
    if (value !== "" && (cell?.f ?? cell?.si ?? null) === null) return true;
  }
  return false;
}

const isTaken = (
  tables: LiveTables,
  table: LiveTable,
  row: number,
): boolean => {
  const own = table.getRange();
  return tables.on(table.getSubunitId()).some((other) => {
    const range = other.getRange();
    return (
      other !== table &&
      row >= range.startRow &&
      row <= range.endRow &&
      range.startColumn <= own.endColumn &&
      own.startColumn <= range.endColumn
    );
  });
};
