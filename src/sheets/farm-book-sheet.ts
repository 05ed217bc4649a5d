import {
  type CellContent,
  columnAt,
  type Contents,
  contentsOf,
} from "../book/contents";
import { isBlank } from "../functions/read-cell";
import { type Column, ownCell, type Table } from "../book/table";
import {
  columnNote,
  columnWidth,
  formatOf,
  headingHeight,
  validationOf,
} from "./farm-book-columns";
import { look } from "./looks";
import type { Cell, Sheet, TableColumn } from "./workbook";

/** One table's sheet: headings in the first row, frozen, with what each column means as a note. */
export function farmBookSheet(table: Table, given: readonly Contents[]): Sheet {
  const contents = contentsOf(given, table);
  const columns = Object.values(table.columns);
  const own = strangerColumns(columns, contents);
  // A worksheet table must have one row at least, so an empty one gets a row to type in.
  const rows = Math.max(1, contents?.rows.length ?? 0);
  const formulas = columns.map((column) =>
    column.formula?.(ownCell(table.name)),
  );
  const values = columns.map((column) => valuesOf(contents, column, rows));
  const widths = columns.map((column, c) =>
    columnWidth(column, values[c] ?? []),
  );
  const tableColumns: readonly TableColumn[] = [
    ...columns.map(({ heading }, c) => {
      const formula = formulas[c];
      return formula === undefined ? { heading } : { heading, formula };
    }),
    ...own.map(({ heading }) => ({ heading })),
  ];
  return {
    name: table.sheet,
    cells: [
      ...headingCells(columns),
      ...columns.flatMap((column, c) =>
        columnCells(column, c, formulas[c], values[c] ?? [], values[0] ?? []),
      ),
      ...own.flatMap((stranger, i) =>
        strangerCells(stranger, columns.length + i),
      ),
    ],
    tables: [
      {
        name: table.name,
        area: {
          row: 0,
          column: 0,
          rows: rows + 1,
          columns: tableColumns.length,
        },
        columns: tableColumns,
      },
    ],
    validations: columns.flatMap((column, c) =>
      validationOf(column, { row: 1, column: c, rows, columns: 1 }, given),
    ),
    merges: [],
    widths: Object.fromEntries(widths.entries()),
    heights: { 0: headingHeight(columns, widths) },
    frozen: { rows: 1, columns: 1 },
  };
}

function headingCells(columns: readonly Column[]): readonly Cell[] {
  return columns.map((column, c) => ({
    row: 0,
    column: c,
    value: column.heading,
    style: { ...look("heading"), wrap: true },
    note: columnNote(column),
  }));
}

function valuesOf(
  contents: Contents | undefined,
  column: Column,
  rows: number,
): readonly CellContent[] {
  const at = contents === undefined ? -1 : columnAt(contents.headings, column);
  return Array.from({ length: rows }, (_, r): CellContent => {
    const value = contents?.rows[r]?.[at];
    return isBlank(value) ? null : (value ?? null);
  });
}

function columnCells(
  column: Column,
  at: number,
  formula: string | undefined,
  values: readonly CellContent[],
  names: readonly CellContent[],
): readonly Cell[] {
  return values.map((value, r): Cell => {
    const place = { row: r + 1, column: at };
    const format = formatOf(column, names[r]);
    if (formula !== undefined) {
      return {
        ...place,
        formula,
        ...(value === null ? {} : { value }),
        style: look("calculated", format),
      };
    }
    const style = look("input", format);
    return value === null ? { ...place, style } : { ...place, value, style };
  });
}

/** A column of the user's own, which we keep behind ours. */
interface Stranger {
  readonly heading: string;
  readonly values: readonly CellContent[];
}

function strangerColumns(
  columns: readonly Column[],
  contents: Contents | undefined,
): readonly Stranger[] {
  if (contents === undefined) return [];
  const ours = columns.map((column) => columnAt(contents.headings, column));
  return contents.headings.flatMap((heading, i) =>
    ours.includes(i)
      ? []
      : [{ heading, values: contents.rows.map((row) => row[i] ?? null) }],
  );
}

const strangerCells = (
  { heading, values }: Stranger,
  column: number,
): readonly Cell[] => [
  { row: 0, column, value: heading, style: { ...look("heading"), wrap: true } },
  ...values.flatMap((value, r) =>
    value === null ? [] : [{ row: r + 1, column, value, style: look("input") }],
  ),
];
