import { unusable } from "../../measures/cannot-answer";
import { rangeText } from "../../sheets/ledger/ledger-range";
import { digestOf, type WriteRecord } from "../../sheets/kept";
import type { Area, Cell, Sheet } from "../../sheets/workbook";
import { cellsChanged, filledArea } from "../filled-cells";
import type { Fill } from "../host";
import { filledText } from "../taken-back";
import { isAble } from "./abilities";
import { rectangles } from "./areas";
import type { Load } from "./in-excel";
import { areaOn } from "./on-sheet";
import { refuseNoSheet, sheetOrNone } from "./read-workbook";
import { contentSteps } from "./render-sheet";
import type { Step } from "./step";

export type FillRecord = NonNullable<WriteRecord["fills"]>[number];

/** What stands where cells are to be filled, as far as it is in the way. */
export interface BeforeFill extends Pick<Sheet, "name" | "cells" | "merges"> {
  /** No cell there has a number format of its own. */
  readonly isPlain: boolean;
}

const PLAIN = "General";

export const loadBeforeFill =
  (fill: Fill): Load<BeforeFill> =>
  (context) => {
    const sheet = sheetOrNone(context, fill.sheet);
    sheet.protection.load("protected");
    const { row, column, rows, columns } = filledArea(fill);
    const range = sheet.getRangeByIndexes(row, column, rows, columns);
    range.load("numberFormat");
    const used = range.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex");
    const merged = isAble("mergedAreas")
      ? range.getMergedAreasOrNullObject()
      : undefined;
    merged?.areas.load("items/rowIndex,items/columnIndex");
    return () => {
      refuseNoSheet(sheet, fill.sheet);
      if (sheet.protection.protected)
        throw unusable(
          `the sheet "${sheet.name}" is protected; take its protection off to fill ${rangeText({ sheet: sheet.name, row, column, rows, columns })}`,
        );
      const merge = merged?.isNullObject === false ? merged.areas.items : [];
      return {
        name: sheet.name,
        cells: used.isNullObject
          ? []
          : [{ row: used.rowIndex, column: used.columnIndex, value: true }],
        merges: merge.map(({ rowIndex, columnIndex }) => ({
          row: rowIndex,
          column: columnIndex,
          rows: 1,
          columns: 1,
        })),
        isPlain: range.numberFormat.every((line: readonly unknown[]) =>
          line.every((format) => format === PLAIN),
        ),
      };
    };
  };

export const fillRecord = (
  fill: Fill,
  { name, isPlain }: BeforeFill,
): FillRecord => ({
  sheet: name,
  ...filledArea(fill),
  digest: digestOf(filledText(fill.cells)),
  isFormatted: isPlain && formatAreas(fill).length > 0,
});

/** The cells as few arrays; a look of theirs is no more than a number format. */
export const fillSteps = (
  fill: Fill,
  { isFormatted }: FillRecord,
): readonly Step[] => [
  ...contentSteps({ name: fill.sheet }, fill.cells),
  ...(isFormatted ? formatAreas(fill) : []).map(({ format, area }): Step => ({
    bytes: 400 + area.rows * 12,
    run: (context) => {
      areaOn(context, { name: fill.sheet }, area).numberFormat = allOf(
        area,
        format,
      );
    },
  })),
];

/** Refuses when somebody has changed what was filled. */
export const loadFillChanged =
  (
    record: FillRecord,
    cellsIn: (range: Excel.Range) => readonly Cell[],
  ): Load<void> =>
  (context) => {
    const sheet = sheetOrNone(context, record.sheet);
    const { row, column, rows, columns } = record;
    const range = sheet.getRangeByIndexes(row, column, rows, columns);
    range.load("rowIndex,columnIndex,formulas,values,valueTypes");
    return () => {
      if (
        sheet.isNullObject ||
        digestOf(filledText(cellsIn(range))) !== record.digest
      )
        throw cellsChanged(record.sheet, record);
    };
  };

/** Asks whether the sheet is there; then the cells are made blank again. */
export const loadEmptied =
  (record: FillRecord): Load<void> =>
  (context) => {
    const sheet = sheetOrNone(context, record.sheet);
    return () => {
      if (sheet.isNullObject) return;
      const { row, column, rows, columns } = record;
      const range = sheet.getRangeByIndexes(row, column, rows, columns);
      range.clear("Contents");
      if (record.isFormatted) range.numberFormat = allOf(record, PLAIN);
    };
  };

const allOf = ({ rows, columns }: Area, format: string): string[][] =>
  Array.from({ length: rows }, () => Array<string>(columns).fill(format));

interface Formatted {
  readonly format: string;
  readonly area: Area;
}

function formatAreas({ cells }: Fill): readonly Formatted[] {
  const byFormat = new Map<string, Cell[]>();
  for (const cell of cells) {
    const format = cell.style?.format ?? PLAIN;
    if (format === PLAIN) continue;
    const known = byFormat.get(format);
    if (known) known.push(cell);
    else byFormat.set(format, [cell]);
  }
  return [...byFormat].flatMap(([format, places]) =>
    rectangles(places, { sideways: true, stacks: true }).map((area) => ({
      format,
      area,
    })),
  );
}
