import type { CellPlace, Host, TableContents } from "../../../hosts/host";
import type { Area, DefinedName } from "../../../sheets/workbook";
import { readFormula, type Formula } from "./formula";
import type { ColumnsOf } from "./structured";

/** What an explanation may look at: the open workbook through the port, its tables and names read once. */
export interface Surroundings {
  readonly host: Pick<Host, "readArea">;
  readonly tables: readonly TableContents[];
  readonly names: readonly DefinedName[];
}

export interface Range extends Area {
  readonly sheet: string;
}

/** The cells a reference points at; undefined for what is no reference or points nowhere. */
export function rangeOf(
  formula: Formula,
  at: CellPlace,
  around: Surroundings,
): Range | undefined {
  switch (formula.kind) {
    case "cells":
      return { sheet: formula.sheet ?? at.sheet, ...formula.area };
    case "columns":
      return columnsRange(formula.of, at, around.tables);
    case "group":
      return rangeOf(formula.of, at, around);
    case "name": {
      const table = tableNamed(formula.name, around.tables);
      if (table)
        return columnsRange(
          { table: table.name, rows: "data" },
          at,
          around.tables,
        );
      const meant = meaningOf(formula.name, around);
      return meant && rangeOf(meant, at, around);
    }
    default:
      return undefined;
  }
}

/** What a defined name stands for, read as a formula. A name that stands for another name is followed once more by the caller. */
export function meaningOf(
  name: string,
  around: Surroundings,
): Formula | undefined {
  const wanted = name.toLowerCase();
  const found = around.names.find((n) => n.name.toLowerCase() === wanted);
  const meant = found && readFormula(`=${found.refersTo}`);
  // A name that refers to itself would never end.
  return meant?.kind === "name" && meant.name.toLowerCase() === wanted
    ? undefined
    : meant;
}

export const tableNamed = (
  name: string,
  tables: readonly TableContents[],
): TableContents | undefined =>
  tables.find((table) => table.name.toLowerCase() === name.toLowerCase());

/** The table a cell stands in, its own heading row included. */
export const tableAt = (
  at: CellPlace,
  tables: readonly TableContents[],
): TableContents | undefined =>
  tables.find(
    (table) =>
      table.sheet === at.sheet &&
      at.row >= table.row &&
      at.row <= table.row + table.rows.length &&
      at.column >= table.column &&
      at.column < table.column + table.headings.length,
  );

function columnsRange(
  of: ColumnsOf,
  at: CellPlace,
  tables: readonly TableContents[],
): Range | undefined {
  const table = tableNamed(of.table, tables);
  if (!table) return undefined;
  const first = of.from === undefined ? 0 : columnOf(table, of.from);
  const last =
    of.to === undefined ? table.headings.length - 1 : columnOf(table, of.to);
  if (first < 0 || last < 0) return undefined;
  const inside = at.row - table.row - 1;
  if (of.rows === "this row" && (inside < 0 || inside >= table.rows.length))
    return undefined;
  const [row, rows] = {
    data: [table.row + 1, table.rows.length] as const,
    all: [table.row, table.rows.length + 1] as const,
    headings: [table.row, 1] as const,
    "this row": [at.row, 1] as const,
  }[of.rows];
  return {
    sheet: table.sheet,
    row,
    column: table.column + Math.min(first, last),
    rows,
    columns: Math.abs(last - first) + 1,
  };
}

const columnOf = (table: TableContents, heading: string): number =>
  table.headings.findIndex((h) => h.toLowerCase() === heading.toLowerCase());
