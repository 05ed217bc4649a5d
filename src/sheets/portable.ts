import { nativeFormula } from "./native-formula";
import type { Workbook } from "./workbook";

/** The same workbook with every call of our functions replaced by plain worksheet functions, so that it works anywhere. */
export const portable = (workbook: Workbook): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) =>
      cell.formula === undefined
        ? cell
        : { ...cell, formula: nativeFormula(cell.formula) },
    ),
    tables: sheet.tables.map((table) => ({
      ...table,
      columns: table.columns.map((column) =>
        column.formula === undefined
          ? column
          : { ...column, formula: nativeFormula(column.formula) },
      ),
    })),
  })),
});
