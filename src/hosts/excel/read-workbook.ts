import { unusable } from "../../measures/cannot-answer";
import type { Area, DefinedName, Stored } from "../../sheets/workbook";
import type { CellFacts, CellPlace, TableContents } from "../host";
import type { Load } from "./in-excel";
import {
  cellProperties,
  formulaIn,
  storedFrom,
  storedIn,
  valueProperties,
} from "./stored-value";

export const loadSheetNames: Load<readonly string[]> = (context) => {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  return () => worksheets.items.map(({ name }) => name);
};

export const loadNames: Load<readonly DefinedName[]> = (context) => {
  const { names } = context.workbook;
  names.load("items/name,items/formula");
  return () =>
    names.items.map(({ name, formula }) => ({
      name,
      refersTo: String(formula).replace(/^=/, ""),
    }));
};

export const loadTableNames: Load<readonly string[]> = (context) => {
  const { tables } = context.workbook;
  tables.load("items/name");
  return () => tables.items.map(({ name }) => name);
};

/** The table of this name with all its rows, hidden and filtered ones too; undefined when there is none. */
export const loadTable =
  (name: string): Load<TableContents | undefined> =>
  (context) => {
    const table = context.workbook.tables.getItemOrNullObject(name);
    table.load("name,showHeaders,showTotals");
    const { worksheet, columns } = table;
    worksheet.load("name");
    columns.load("items/name");
    const range = table.getRange();
    range.load(`rowIndex,columnIndex,${valueProperties}`);
    return () => {
      if (table.isNullObject) return undefined;
      const rows = storedIn(range);
      return {
        name: table.name,
        sheet: worksheet.name,
        row: range.rowIndex - (table.showHeaders ? 0 : 1),
        column: range.columnIndex,
        headings: columns.items.map((column) => column.name),
        rows: rows.slice(
          table.showHeaders ? 1 : 0,
          table.showTotals ? -1 : undefined,
        ),
      };
    };
  };

export const loadArea =
  (sheetName: string, area: Area): Load<readonly (readonly Stored[])[]> =>
  (context) => {
    const sheet = sheetOrNone(context, sheetName);
    const range = sheet.getRangeByIndexes(
      area.row,
      area.column,
      area.rows,
      area.columns,
    );
    range.load(valueProperties);
    return () => {
      refuseNoSheet(sheet, sheetName);
      return storedIn(range);
    };
  };

export const loadFacts =
  (at: CellPlace): Load<CellFacts> =>
  (context) => {
    const sheet = sheetOrNone(context, at.sheet);
    const cell = sheet.getCell(at.row, at.column);
    cell.load(cellProperties);
    return () => {
      refuseNoSheet(sheet, at.sheet);
      return factsOf(cell, { ...at, sheet: sheet.name });
    };
  };

/** The facts of a loaded cell. */
export function factsOf(cell: Excel.Range, at: CellPlace): CellFacts {
  const [[value] = []] = cell.values as unknown[][];
  const [[type] = []] = cell.valueTypes as unknown[][];
  const [[entered] = []] = cell.formulas as unknown[][];
  const formula = formulaIn(entered, value);
  return {
    ...at,
    value: storedFrom(value, type),
    ...(formula === undefined ? {} : { formula }),
  };
}

export function sheetOrNone(
  context: Excel.RequestContext,
  name: string,
): Excel.Worksheet {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load("name");
  return sheet;
}

export function refuseNoSheet(sheet: Excel.Worksheet, name: string): void {
  if (sheet.isNullObject) throw unusable(`there is no sheet "${name}"`);
}
