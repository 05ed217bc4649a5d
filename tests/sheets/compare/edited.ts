import type { Cell, Sheet, Workbook } from "../../../src/sheets/workbook";

/** A workbook as a worksheet program leaves it after a row was put in or taken out: everything below moves, formulas follow. */
export function withRowsMoved(
  workbook: Workbook,
  sheetName: string,
  at: number,
  by: 1 | -1,
): Workbook {
  const moved = (row: number): number =>
    row >= at + (by < 0 ? 1 : 0) ? row + by : row;
  const follow = (formula: string, on: string): string =>
    formula
      .split(/("(?:[^"]|"")*")/)
      .map((text, i) =>
        i % 2 === 1
          ? text
          : text.replace(
              /((?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![\w(])/g,
              (_, named: string | undefined, area: string) => {
                const there =
                  named?.replace(/^'|'!$|!$/g, "").replace(/''/g, "'") ?? on;
                return `${named ?? ""}${
                  there === sheetName
                    ? area.replace(
                        /(\$?[A-Z]{1,3}\$?)(\d+)/g,
                        (__, column: string, row: string) =>
                          `${column}${moved(Number(row) - 1) + 1}`,
                      )
                    : area
                }`;
              },
            ),
      )
      .join("");
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells
        .filter(
          (cell) => !(sheet.name === sheetName && by < 0 && cell.row === at),
        )
        .map((cell) => ({
          ...cell,
          row: sheet.name === sheetName ? moved(cell.row) : cell.row,
          ...(cell.formula === undefined
            ? {}
            : { formula: follow(cell.formula, sheet.name) }),
        })),
    })),
  };
}

/** The workbook with one cell typed over. */
export const withCell = (
  workbook: Workbook,
  sheetName: string,
  cell: Cell,
): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet): Sheet =>
    sheet.name === sheetName
      ? {
          ...sheet,
          cells: [
            ...sheet.cells.filter(
              (c) => c.row !== cell.row || c.column !== cell.column,
            ),
            cell,
          ],
        }
      : sheet,
  ),
});
