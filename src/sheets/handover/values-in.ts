import type { Stored, Workbook } from "../workbook";

/** Results of a worked-out workbook by sheet and place. */
export function valuesIn(
  workbook: Workbook,
): (sheet: string) => (row: number, column: number) => Stored {
  return (name) => {
    const cells = new Map(
      workbook.sheets
        .find((sheet) => sheet.name === name)
        ?.cells.map((cell) => [
          `${cell.row},${cell.column}`,
          cell.value ?? null,
        ]),
    );
    return (row, column) => cells.get(`${row},${column}`) ?? null;
  };
}
