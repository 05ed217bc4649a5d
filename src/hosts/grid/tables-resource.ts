import type { Table } from "../../sheets/workbook";
import { areaToRange, rangeToArea } from "./ranges";

/** A table as the grid's snapshot holds it. */
export interface GridTable {
  readonly id: string;
  readonly name: string;
  readonly range: ReturnType<typeof areaToRange>;
  readonly columns: readonly GridColumn[];
  readonly options: { readonly tableStyleId: string };
  readonly meta: Record<string, never>;
  readonly filters: {
    readonly tableColumnFilterList: readonly never[];
  };
}

interface GridColumn {
  readonly id: string;
  readonly displayName: string;
  readonly dataType: string;
  readonly formula: string;
  readonly meta: Record<string, never>;
  readonly style: Record<string, never>;
}

export type GridTables = Readonly<
  Record<
    string,
    readonly GridTable[] | { readonly tables: readonly GridTable[] }
  >
>;

export const tableToGrid = (table: Table, id: string): GridTable => ({
  id,
  name: table.name,
  range: areaToRange(table.area),
  columns: table.columns.map((column, i) => ({
    id: `${id}-${i + 1}`,
    displayName: column.heading,
    dataType: "",
    formula: column.formula ?? "",
    meta: {},
    style: {},
  })),
  options: { tableStyleId: "" },
  meta: {},
  filters: { tableColumnFilterList: [] },
});

/**
 * `headingAt` gives what a heading cell shows, for a person may have typed over it. A column whose formula the grid
 * dropped has none.
 */
export function tableFromGrid(
  table: GridTable,
  headingAt: (row: number, column: number) => string | undefined,
): Table {
  const area = rangeToArea(table.range);
  return {
    name: table.name,
    area,
    columns: table.columns.slice(0, area.columns).map((column, i) => ({
      heading: headingAt(area.row, area.column + i) ?? column.displayName,
      ...(column.formula ? { formula: column.formula } : {}),
    })),
  };
}

export const tablesOf = (
  tables: GridTables,
  sheetId: string,
): readonly GridTable[] => {
  const found = tables[sheetId] ?? [];
  return "tables" in found ? found.tables : found;
};
