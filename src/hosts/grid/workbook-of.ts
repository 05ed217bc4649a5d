import {
  BooleanNumber,
  type ICellData,
  type ISheetDataValidationRule,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  type Nullable,
} from "@univerjs/core";
import type {
  Area,
  Cell,
  Sheet,
  Validation,
  Workbook,
} from "../../sheets/workbook";
import { styleFromGrid } from "./cell-style";
import { namesFromGrid } from "./names-resource";
import { rangeToArea } from "./ranges";
import { columnCharacters, rowPoints } from "./sizes";
import { resourceNames } from "./snapshot";
import { valueFromGrid } from "./stored-value";
import { tableFromGrid, tablesOf, type GridTables } from "./tables-resource";
import { validationsFromGrid } from "./validation-rules";

/** The formula of a cell; the grid may keep it with another cell that shares it. */
export type FormulaAt = (
  sheetId: string,
  row: number,
  column: number,
) => string | undefined;

type Notes = Readonly<
  Record<
    string,
    Readonly<
      Record<string, Readonly<Record<string, { readonly note: string }>>>
    >
  >
>;

/**
 * A workbook from what the grid saves. Cells come row by row; a spilled answer is only at its formula; values are as
 * precise as calculated.
 */
export function workbookOf(
  saved: IWorkbookData,
  formulaAt: FormulaAt = ownFormula(saved),
): Workbook {
  const tables = resource<GridTables>(saved, "tables");
  const rules = resource<Record<string, readonly ISheetDataValidationRule[]>>(
    saved,
    "validations",
  );
  const notes = resource<Notes>(saved, "notes");
  return {
    title: saved.name,
    sheets: saved.sheetOrder.flatMap((id) => {
      const sheet = saved.sheets[id];
      return sheet
        ? [
            sheetFromGrid(id, sheet, {
              styles: saved.styles,
              formulaAt,
              notes: notes[id] ?? {},
              tables: tablesOf(tables, id),
              validations: (rules[id] ?? []).flatMap(validationsFromGrid),
            }),
          ]
        : [];
    }),
    names: namesFromGrid(
      Object.values(
        resource<Parameters<typeof namesFromGrid>[0]>(saved, "names"),
      ),
    ),
  };
}

function resource<T extends object>(
  saved: IWorkbookData,
  kind: keyof typeof resourceNames,
): T {
  const found = saved.resources?.find((r) => r.name === resourceNames[kind]);
  return JSON.parse(found?.data || "{}") as T;
}

const ownFormula =
  (saved: IWorkbookData): FormulaAt =>
  (sheetId, row, column) =>
    saved.sheets[sheetId]?.cellData?.[row]?.[column]?.f ?? undefined;

interface Beside {
  readonly styles: IWorkbookData["styles"];
  readonly formulaAt: FormulaAt;
  readonly notes: Notes[string];
  readonly tables: ReturnType<typeof tablesOf>;
  readonly validations: readonly Validation[];
}

function sheetFromGrid(
  id: string,
  sheet: Partial<IWorksheetData>,
  beside: Beside,
): Sheet {
  const cells = cellsFromGrid(id, sheet, beside);
  const texts = new Map(
    cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]),
  );
  const headingAt = (row: number, column: number): string | undefined => {
    const shown = texts.get(`${row},${column}`);
    return typeof shown === "string" && shown !== "" ? shown : undefined;
  };
  return {
    name: sheet.name ?? "",
    cells,
    tables: beside.tables.map((table) => tableFromGrid(table, headingAt)),
    validations: beside.validations,
    merges: (sheet.mergeData ?? []).map(rangeToArea) satisfies Area[],
    widths: sizes(sheet.columnData, (column) =>
      column.w === undefined ? undefined : columnCharacters(column.w),
    ),
    heights: sizes(sheet.rowData, (row) =>
      row.h === undefined || row.ia !== BooleanNumber.FALSE
        ? undefined
        : rowPoints(row.h),
    ),
    frozen: {
      rows: sheet.freeze?.ySplit ?? 0,
      columns: sheet.freeze?.xSplit ?? 0,
    },
    ...(sheet.hidden === BooleanNumber.TRUE ? { hidden: true } : {}),
    ...(sheet.tabColor ? { tabColor: sheet.tabColor } : {}),
    ...keptForFiles(sheet),
  };
}

/** Charts and print settings as `snapshotOf` put them aside. */
function keptForFiles({
  custom,
}: Partial<IWorksheetData>): Pick<Sheet, "charts" | "print"> {
  const kept = custom as Pick<Sheet, "charts" | "print"> | null | undefined;
  return {
    ...(kept?.charts ? { charts: kept.charts } : {}),
    ...(kept?.print ? { print: kept.print } : {}),
  };
}

function cellsFromGrid(
  id: string,
  sheet: Partial<IWorksheetData>,
  { styles, formulaAt, notes }: Beside,
): readonly Cell[] {
  const found: Cell[] = [];
  for (const row of numbers(sheet.cellData, notes)) {
    const data = sheet.cellData?.[row] ?? {};
    for (const column of numbers(data, notes[row])) {
      const cell = cellFromGrid(data[column], {
        style: data[column]?.s,
        styles,
        formula: formulaAt(id, row, column),
        note: notes[row]?.[column]?.note,
      });
      if (Object.keys(cell).length > 0) found.push({ row, column, ...cell });
    }
  }
  return found;
}

function cellFromGrid(
  data: Nullable<ICellData>,
  beside: {
    readonly style: ICellData["s"];
    readonly styles: IWorkbookData["styles"];
    readonly formula: string | undefined;
    readonly note: string | undefined;
  },
): Omit<Cell, "row" | "column"> {
  const value = valueFromGrid(data);
  const { formula, note } = beside;
  const given: Nullable<IStyleData> =
    typeof beside.style === "string"
      ? beside.styles[beside.style]
      : beside.style;
  const style = given ? styleFromGrid(given) : undefined;
  return {
    ...(value === null ? {} : { value }),
    ...(formula ? { formula } : {}),
    ...(style ? { style } : {}),
    ...(note ? { note } : {}),
  };
}

/** Row or column numbers that occur in any of these, in order. */
const numbers = (...held: readonly (object | undefined)[]): readonly number[] =>
  [...new Set(held.flatMap((h) => Object.keys(h ?? {}).map(Number)))].sort(
    (a, b) => a - b,
  );

const sizes = <T extends object>(
  given: Readonly<Record<number, T>> | undefined,
  size: (of: T) => number | undefined,
): Record<number, number> =>
  Object.fromEntries(
    Object.entries(given ?? {}).flatMap(([index, of]) => {
      const found = size(of);
      return found === undefined ? [] : [[Number(index), found]];
    }),
  );
