import { nativeFormula } from "./native-formula";
import type { Workbook } from "./workbook";

/** The same workbook with every call of our functions replaced by plain worksheet functions, so that it works anywhere. */
export const portable = (workbook: Workbook): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map(inPlainFunctions),
    tables: sheet.tables.map((table) => ({
      ...table,
      columns: table.columns.map(inPlainFunctions),
    })),
  })),
});

/** A cell or a calculated column with its formula in plain functions. */
const inPlainFunctions = <T extends { readonly formula?: string }>(of: T): T =>
  of.formula === undefined ? of : { ...of, formula: nativeFormula(of.formula) };
