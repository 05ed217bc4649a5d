import { unusable, type CannotAnswer } from "../measures/cannot-answer";
import { cellAddress, placeNumber, sheetReference } from "../sheets/address";
import { rangeText } from "../sheets/ledger/ledger-range";
import type { Area, Cell, Sheet, Workbook } from "../sheets/workbook";
import type { Fill } from "./host";
import { covers, overlap, withSheet } from "./table-growth";

/** Cells that were put into a blank rectangle: where, what it held before and what it held just after. */
export interface Filled {
  readonly sheet: string;
  readonly area: Area;
  /** Looks and notes of blank cells. */
  readonly cellsBefore: readonly Cell[];
  readonly cellsAfter: readonly Cell[];
}

/** The smallest rectangle that holds all the cells. */
export function filledArea({ cells }: Fill): Area {
  let [top, left, bottom, right] = [Infinity, Infinity, 0, 0];
  for (const { row, column } of cells) {
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  }
  return {
    row: top,
    column: left,
    rows: bottom - top + 1,
    columns: right - left + 1,
  };
}

/** Puts cells into a rectangle of a sheet; refuses when anything stands in it. A blank cell's own look and note stay. */
export function filled(
  workbook: Workbook,
  fill: Fill,
): { readonly workbook: Workbook; readonly filled: Filled } {
  const sheet = sheetNamed(workbook, fill.sheet);
  const area = filledArea(fill);
  const cellsBefore = sheet.cells.filter((cell) => covers(area, cell));
  const inTheWay =
    cellsBefore.find(isInUse) ??
    [...sheet.merges, ...sheet.tables.map((table) => table.area)].find((one) =>
      overlap(one, area),
    );
  if (inTheWay)
    throw unusable(
      `${sheetReference(sheet.name)}!${cellAddress(inTheWay.row, inTheWay.column)} is in use, so nothing was put into ${rangeText({ sheet: sheet.name, ...area })}`,
    );
  const before = new Map(
    cellsBefore.map((cell) => [placeNumber(cell.row, cell.column), cell]),
  );
  const fresh = fill.cells.map((cell) => {
    const held = before.get(placeNumber(cell.row, cell.column));
    return held === undefined
      ? cell
      : {
          ...held,
          ...cell,
          ...(cell.style === undefined && held.style === undefined
            ? {}
            : { style: { ...cell.style, ...held.style } }),
        };
  });
  const places = new Set(
    fresh.map(({ row, column }) => placeNumber(row, column)),
  );
  return {
    workbook: withSheet(workbook, sheet, {
      ...sheet,
      cells: [
        ...sheet.cells.filter(
          ({ row, column }) => !places.has(placeNumber(row, column)),
        ),
        ...fresh,
      ],
    }),
    filled: { sheet: sheet.name, area, cellsBefore, cellsAfter: fresh },
  };
}

/** The workbook without cells that were filled; refuses when somebody has changed them since. */
export function emptied(
  workbook: Workbook,
  { sheet: name, area, cellsBefore, cellsAfter }: Filled,
  says: (cells: readonly Cell[]) => string,
): Workbook {
  const sheet = sheetNamed(workbook, name);
  const now = sheet.cells.filter((cell) => covers(area, cell));
  if (says(now) !== says(cellsAfter)) throw cellsChanged(name, area);
  return withSheet(workbook, sheet, {
    ...sheet,
    cells: [
      ...sheet.cells.filter((cell) => !covers(area, cell)),
      ...cellsBefore,
    ],
  });
}

export const cellsChanged = (sheet: string, area: Area): CannotAnswer =>
  unusable(
    `the cells ${rangeText({ sheet, ...area })} have been changed since they were filled, so they stay; clear them by hand if they are not wanted`,
  );

const isInUse = ({ formula, value }: Cell): boolean =>
  formula !== undefined || (value ?? "") !== "";

function sheetNamed({ sheets }: Workbook, name: string): Sheet {
  const sheet = sheets.find(
    (one) => one.name.toLowerCase() === name.toLowerCase(),
  );
  if (!sheet) throw unusable(`there is no sheet "${name}"`);
  return sheet;
}
