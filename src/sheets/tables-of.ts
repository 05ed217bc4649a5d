import type { Contents } from "../book/contents";
import { placeNumber } from "./address";
import type { Sheet, Stored, Table, Workbook } from "./workbook";

/** Every worksheet table of a workbook with the values of its cells; a formula not yet worked out is blank. */
export const tablesOf = (workbook: Workbook): readonly Contents[] =>
  workbook.sheets.flatMap((sheet) => {
    const values = new Map(
      sheet.cells.map((cell) => [
        placeNumber(cell.row, cell.column),
        cell.value ?? null,
      ]),
    );
    return sheet.tables.map((table) => contents(sheet, table, values));
  });

function contents(
  sheet: Sheet,
  table: Table,
  values: ReadonlyMap<number, Stored>,
): Contents {
  const { row, column, rows, columns } = table.area;
  return {
    name: table.name,
    sheet: sheet.name,
    row,
    column,
    headings: table.columns.map(({ heading }) => heading),
    rows: Array.from({ length: rows - 1 }, (_, r) =>
      Array.from(
        { length: columns },
        (_unused, c) =>
          values.get(placeNumber(row + 1 + r, column + c)) ?? null,
      ),
    ),
  };
}
