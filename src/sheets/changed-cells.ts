import type { Cell, Sheet, Workbook } from "./workbook";

/** The same workbook with every cell changed by one rule; everything else is the same object. */
export const changedCells = (
  workbook: Workbook,
  change: (cell: Cell, sheet: Sheet) => Cell,
): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => change(cell, sheet)),
  })),
});
