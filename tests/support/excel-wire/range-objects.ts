import type { Area } from "../../../src/sheets/workbook";
import type { BookState, CellState, SheetState } from "./book-state";
import { covers, overlap, placeKey } from "./book-state";
import { moveFormula } from "../../../src/hosts/file/shared-formula";
import { addressOf, areasOf } from "./addresses";
import { entered } from "./entered";
import { formatObject } from "./format-objects";
import { validationObject } from "./validation-object";
import {
  badArgument,
  refuseText,
  WireError,
  type WireObject,
} from "./wire-object";
import type { WireBook } from "./wire-book";

/** A rectangle of cells as an object of the wire. */
export interface RangeObject extends WireObject {
  readonly sheet: SheetState;
  readonly area: Area;
}

export function rangeObject(
  book: WireBook,
  sheet: SheetState,
  area: Area,
): RangeObject {
  const { state } = book;
  if (area.row < 0 || area.column < 0 || area.rows < 1 || area.columns < 1)
    throw badArgument("a range needs at least one cell");
  const at = (row: number, column: number, rows = 1, columns = 1) =>
    rangeObject(book, sheet, { row, column, rows, columns });
  const grid = (of: (cell: CellState | undefined) => unknown) =>
    Array.from({ length: area.rows }, (_, r) =>
      Array.from({ length: area.columns }, (_unused, c) =>
        of(sheet.cells.get(placeKey(area.row + r, area.column + c))),
      ),
    );
  const write = (
    given: unknown,
    how: (value: unknown, row: number, column: number) => void,
  ): void => {
    for (const [r, row] of shaped(given, area).entries())
      for (const [c, value] of row.entries())
        // A null leaves its cell as it is.
        if (value !== null) how(value, area.row + r, area.column + c);
  };
  const enter = (given: unknown): void =>
    write(given, (value, row, column) =>
      enterCell(state, sheet, row, column, value),
    );
  return {
    kind: "Range",
    sheet,
    area,
    get: {
      Address: () => addressOf(area, sheet.name),
      RowIndex: () => area.row,
      ColumnIndex: () => area.column,
      RowCount: () => area.rows,
      ColumnCount: () => area.columns,
      Values: () => grid(shownValue),
      Formulas: () => grid((cell) => cell?.formula ?? shownValue(cell)),
      ValueTypes: () => grid(typeOf),
      NumberFormat: () => grid((cell) => cell?.format ?? "General"),
    },
    set: {
      Values: enter,
      Formulas: enter,
      NumberFormat: (given: unknown) =>
        write(given, (format, row, column) => {
          changeCell(sheet, row, column, { format: String(format) });
          if (format === "General") dropFormat(sheet, row, column);
        }),
    },
    open: {
      Worksheet: () => book.sheetObject(sheet),
      Format: () => formatObject(sheet, [area]),
      DataValidation: () => validationObject(sheet, [area]),
      GetRow: (row: number) => at(area.row + row, area.column, 1, area.columns),
      GetLastRow: () =>
        at(area.row + area.rows - 1, area.column, 1, area.columns),
      GetCell: (row: number, column: number) =>
        at(area.row + row, area.column + column),
      GetBoundingRect: (other: RangeObject) =>
        rangeObject(book, sheet, around(area, other.area)),
      GetEntireColumn: () =>
        rangeObject(book, sheet, { ...area, row: 0, rows: 1_048_576 }),
      GetOffsetRange: (rows: number, columns: number) =>
        at(area.row + rows, area.column + columns, area.rows, area.columns),
      GetResizedRange: (rows: number, columns: number) =>
        at(area.row, area.column, area.rows + rows, area.columns + columns),
      GetUsedRangeOrNullObject: () => {
        const used = usedArea(sheet, area);
        return used && rangeObject(book, sheet, used);
      },
      GetMergedAreasOrNullObject: () => {
        const merged = sheet.merges.filter((merge) => overlap(merge, area));
        return merged.length === 0 ? null : book.areasObject(sheet, merged);
      },
    },
    call: {
      _ValidateArraySize: (rows: number, columns: number) => {
        if (rows !== area.rows || columns !== area.columns)
          throw badArgument("the array is not of the range's size");
      },
      Merge: () => {
        refuseProtected(sheet);
        sheet.merges.push(area);
      },
      Select: () => {
        if (sheet.visibility !== "Visible")
          throw new WireError("InvalidOperation", "The sheet is hidden");
        book.select(sheet.name, area);
      },
      Clear: (what: string) => {
        if (what !== "Contents") throw badArgument(`clear ${what}`);
        enter("");
      },
      CopyFrom: (source: RangeObject, kind: string) => {
        refuseText(source);
        copyDown(state, source, area, kind);
      },
      Delete: (shift: string) => {
        if (shift !== "Up") throw badArgument(`delete ${shift}`);
        deleteUp(sheet, area);
      },
    },
  };
}

export function enterCell(
  state: BookState,
  sheet: SheetState,
  row: number,
  column: number,
  raw: unknown,
): void {
  const key = placeKey(row, column);
  const before = sheet.cells.get(key);
  if (sheet.isProtected && !before?.unlocked)
    throw new WireError("AccessDenied", "The sheet is protected");
  // Writing into the hidden part of merged cells is lost without a word.
  const merge = sheet.merges.find((area) => covers(area, row, column));
  if (merge && (merge.row !== row || merge.column !== column)) return;
  state.touched.add(sheet.id);
  const { formula: _, value: _old, quoted: _mark, ...rest } = before ?? {};
  const now = entered(raw);
  const { formula } = now;
  const value =
    formula === undefined
      ? now.value
      : (state.result(sheet.name, row, column, formula) ?? now.value);
  keepCell(sheet, key, { ...rest, ...now, value });
}

export function changeCell(
  sheet: SheetState,
  row: number,
  column: number,
  change: Partial<CellState>,
): void {
  refuseProtected(sheet);
  const key = placeKey(row, column);
  keepCell(sheet, key, {
    ...(sheet.cells.get(key) ?? { value: null }),
    ...change,
  });
}

/** "General" is how a cell without a format of its own says so. */
function dropFormat(sheet: SheetState, row: number, column: number): void {
  const key = placeKey(row, column);
  const { format: _, ...rest } = sheet.cells.get(key) ?? { value: null };
  keepCell(sheet, key, rest);
}

function keepCell(sheet: SheetState, key: string, cell: CellState): void {
  if (cell.value === null && Object.keys(cell).length === 1)
    sheet.cells.delete(key);
  else sheet.cells.set(key, cell);
}

export function refuseProtected(sheet: SheetState): void {
  if (sheet.isProtected)
    throw new WireError("AccessDenied", "The sheet is protected");
}

/** Formulas of one row into all rows of an area, as pasting does; references that are not fixed move along. */
function copyDown(
  state: BookState,
  { sheet, area: from }: RangeObject,
  to: Area,
  kind: string,
): void {
  if (kind !== "Formulas" || from.rows !== 1 || from.columns !== to.columns)
    throw badArgument("only copies of a row's formulas are modelled");
  for (let r = 0; r < to.rows; r += 1)
    for (let c = 0; c < to.columns; c += 1) {
      const { formula } =
        sheet.cells.get(placeKey(from.row, from.column + c)) ?? {};
      if (formula === undefined) throw badArgument("a copy of no formula");
      enterCell(
        state,
        sheet,
        to.row + r,
        to.column + c,
        moveFormula(formula, to.row + r - from.row, to.column - from.column),
      );
    }
}

/** Cells below move up within the columns, and a table that held them shrinks. */
function deleteUp(sheet: SheetState, area: Area): void {
  refuseProtected(sheet);
  const end = area.row + area.rows;
  const moved = [...sheet.cells].flatMap(([key, cell]) => {
    const [row = 0, column = 0] = key.split(",").map(Number);
    const isInColumns = covers({ ...area, row: 0, rows: 1e7 }, row, column);
    if (!isInColumns || row < area.row) return [[key, cell] as const];
    return row < end
      ? []
      : [[placeKey(row - area.rows, column), cell] as const];
  });
  sheet.cells.clear();
  for (const [key, cell] of moved) sheet.cells.set(key, cell);
  for (const table of sheet.tables)
    if (overlap(table.area, area)) {
      const rows = table.area.rows - area.rows;
      if (rows < 2) throw badArgument("a table keeps one row");
      table.area = { ...table.area, rows };
    }
  sheet.validations = sheet.validations.flatMap((validation) => {
    const { area: held } = validation;
    if (!overlap(held, area)) return [validation];
    const rows = held.rows - area.rows;
    return rows < 1 ? [] : [{ ...validation, area: { ...held, rows } }];
  });
}

const shownValue = (cell: CellState | undefined): unknown => {
  const value = cell?.value ?? null;
  return value === null ? "" : typeof value === "object" ? value.error : value;
};

function typeOf(cell: CellState | undefined): string {
  const value = cell?.value ?? null;
  if (value === null) return "Empty";
  if (typeof value === "object") return "Error";
  return { string: "String", number: "Double", boolean: "Boolean" }[
    typeof value as "string" | "number" | "boolean"
  ];
}

/** One value stands for every cell; otherwise the array has to have the range's own shape. */
function shaped(given: unknown, area: Area): readonly (readonly unknown[])[] {
  if (!Array.isArray(given))
    return Array.from({ length: area.rows }, () =>
      Array<unknown>(area.columns).fill(given),
    );
  const rows = given as readonly (readonly unknown[])[];
  if (
    rows.length !== area.rows ||
    rows.some((row) => !Array.isArray(row) || row.length !== area.columns)
  )
    throw badArgument("the array is not of the range's size");
  return rows;
}

function usedArea(sheet: SheetState, within: Area): Area | null {
  const used = [...sheet.cells]
    .filter(([, cell]) => cell.value !== null || cell.formula !== undefined)
    .map(([key]) => key.split(",").map(Number))
    .filter(([row = 0, column = 0]) => covers(within, row, column))
    .map(([row = 0, column = 0]) => ({ row, column, rows: 1, columns: 1 }));
  const [first, ...rest] = used;
  return first ? rest.reduce(around, first) : null;
}

export function around(a: Area, b: Area): Area {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return {
    row,
    column,
    rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
    columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
  };
}

export const rangeOf = (
  book: WireBook,
  sheet: SheetState,
  address: string,
): RangeObject => {
  const [area, ...more] = areasOf(address);
  if (!area || more.length > 0) throw badArgument(`the address ${address}`);
  return rangeObject(book, sheet, area);
};
