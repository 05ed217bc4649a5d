import {
  BooleanNumber,
  LocaleType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IResources,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import type { Area, Cell, Sheet, Workbook } from "../../sheets/workbook";
import { plainStyle, styleToGrid } from "./cell-style";
import { namesToGrid } from "./names-resource";
import { areaToRange } from "./ranges";
import { neededHeights } from "./row-heights";
import { columnPixels, plainColumn, plainRow, rowPixels } from "./sizes";
import { valueToGrid } from "./stored-value";
import { tableToGrid } from "./tables-resource";
import { validationToGrid } from "./validation-rules";

export const resourceNames = {
  tables: "SHEET_TABLE_PLUGIN",
  validations: "SHEET_DATA_VALIDATION_PLUGIN",
  notes: "SHEET_NOTE_PLUGIN",
  names: "SHEET_DEFINED_NAME_PLUGIN",
} as const;

const spareRows = 100;
const spareColumns = 6;
const leastRows = 200;
const leastColumns = 26;

/** The grid's own form of a workbook; `id` names it inside one engine. */
export function snapshotOf(workbook: Workbook, id = "book"): IWorkbookData {
  const styles = new StyleList();
  const ids = workbook.sheets.map((_, i) => `sheet-${i + 1}`);
  const bySheet = <T>(make: (sheet: Sheet, index: number) => T) =>
    Object.fromEntries(
      workbook.sheets.map((sheet, i) => [ids[i] ?? "", make(sheet, i)]),
    );
  const sheets = bySheet((sheet, i) =>
    sheetToGrid(sheet, ids[i] ?? "", styles),
  );
  return {
    id,
    name: workbook.title,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: styles.byId(),
    sheetOrder: ids,
    sheets,
    resources: resources({
      tables: bySheet((sheet, s) =>
        sheet.tables.map((table, t) =>
          tableToGrid(table, `table-${s + 1}-${t + 1}`),
        ),
      ),
      validations: bySheet((sheet, s) =>
        sheet.validations.map((validation, v) =>
          validationToGrid(validation, `rule-${s + 1}-${v + 1}`),
        ),
      ),
      notes: bySheet((sheet) => notesToGrid(sheet.cells)),
      names: namesToGrid(workbook.names),
    }),
  };
}

const resources = (
  held: Readonly<Record<keyof typeof resourceNames, unknown>>,
): IResources =>
  (Object.keys(resourceNames) as (keyof typeof resourceNames)[]).map(
    (kind) => ({
      name: resourceNames[kind],
      data: JSON.stringify(held[kind]),
    }),
  );

function sheetToGrid(
  sheet: Sheet,
  id: string,
  styles: StyleList,
): Partial<IWorksheetData> {
  const { rows, columns } = sheet.frozen;
  return {
    id,
    name: sheet.name,
    tabColor: sheet.tabColor ?? "",
    hidden: sheet.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    freeze: {
      xSplit: columns,
      ySplit: rows,
      startRow: rows > 0 ? rows : -1,
      startColumn: columns > 0 ? columns : -1,
    },
    ...extent(sheet),
    // The grid draws no charts and prints nothing; it keeps them for the file.
    ...(sheet.charts || sheet.print
      ? { custom: { charts: sheet.charts, print: sheet.print } }
      : {}),
    defaultColumnWidth: columnPixels(plainColumn),
    defaultRowHeight: rowPixels(plainRow),
    defaultStyle: plainStyle,
    mergeData: sheet.merges.map(areaToRange),
    cellData: cellsToGrid(sheet, styles),
    columnData: mapped(sheet.widths, (width) => ({ w: columnPixels(width) })),
    rowData: {
      ...mapped(neededHeights(sheet), (height) => ({
        ah: height,
        ia: BooleanNumber.TRUE,
      })),
      ...mapped(sheet.heights, (height) => ({
        h: rowPixels(height),
        ia: BooleanNumber.FALSE,
      })),
    },
  };
}

function extent(
  sheet: Sheet,
): Pick<IWorksheetData, "rowCount" | "columnCount"> {
  const areas = [...sheet.tables, ...sheet.validations].map((t) => t.area);
  const last = (of: readonly number[]): number =>
    of.reduce((most, n) => Math.max(most, n), 0);
  const row = last([
    ...sheet.cells.map((c) => c.row),
    ...areas.map((a) => a.row + a.rows),
  ]);
  const column = last([
    ...sheet.cells.map((c) => c.column),
    ...areas.map((a) => a.column + a.columns),
  ]);
  return {
    rowCount: Math.max(leastRows, row + spareRows),
    columnCount: Math.max(leastColumns, column + spareColumns),
  };
}

function cellsToGrid(
  sheet: Sheet,
  styles: StyleList,
): IObjectMatrixPrimitiveType<ICellData> {
  const matrix: IObjectMatrixPrimitiveType<ICellData> = {};
  for (const cell of sheet.cells) {
    const data: ICellData = {
      // A spilled value put in as typed would stand in its formula's way.
      ...(cell.spilled ? {} : valueToGrid(cell.value)),
      ...(cell.formula === undefined ? {} : { f: cell.formula }),
      ...(cell.style === undefined
        ? {}
        : { s: styles.idOf(styleToGrid(cell.style)) }),
    };
    (matrix[cell.row] ??= {})[cell.column] = data;
  }
  for (const { area, rule } of sheet.validations)
    if (rule.kind === "list" || rule.kind === "list from")
      spellOutFont(matrix, area, styles);
  return matrix;
}

const mostChoiceCells = 5000;

/** A cell with choices is drawn by other code, which overlooks the sheet's own font. */
function spellOutFont(
  matrix: IObjectMatrixPrimitiveType<ICellData>,
  area: Area,
  styles: StyleList,
): void {
  if (area.rows * area.columns > mostChoiceCells) return;
  for (let row = area.row; row < area.row + area.rows; row += 1)
    for (let c = area.column; c < area.column + area.columns; c += 1) {
      const cell = ((matrix[row] ??= {})[c] ??= {});
      const style = styles.byId()[String(cell.s)] ?? {};
      if (style.ff === undefined)
        cell.s = styles.idOf({ ...plainStyle, ...style });
    }
}

function notesToGrid(
  cells: readonly Cell[],
): Record<number, Record<number, unknown>> {
  const notes: Record<number, Record<number, unknown>> = {};
  for (const { row, column: col, note } of cells) {
    if (note === undefined) continue;
    const lines = note
      .split("\n")
      .reduce((n, line) => n + Math.max(1, Math.ceil(line.length / 32)), 0);
    (notes[row] ??= {})[col] = {
      id: `note-${row}-${col}`,
      row,
      col,
      width: 220,
      height: 32 + 18 * lines,
      note,
    };
  }
  return notes;
}

const mapped = <T>(
  given: Readonly<Record<number, number>>,
  make: (size: number) => T,
): Record<number, T> =>
  Object.fromEntries(
    Object.entries(given).map(([index, size]) => [index, make(size)]),
  );

/** The grid shares styles by id; a sheet has few different ones. */
class StyleList {
  readonly #ids = new Map<string, string>();
  readonly #styles: Record<string, IStyleData> = {};

  idOf(style: IStyleData): string {
    const text = JSON.stringify(style);
    const known = this.#ids.get(text);
    if (known !== undefined) return known;
    const id = `style-${this.#ids.size + 1}`;
    this.#ids.set(text, id);
    this.#styles[id] = style;
    return id;
  }

  byId(): Record<string, IStyleData> {
    return this.#styles;
  }
}
