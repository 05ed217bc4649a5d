import { isWholeColumns, isWholeRows } from "./addresses";
import type { Area } from "../../../src/sheets/workbook";
import { placeKey, type SheetState } from "./book-state";
import { changeCell } from "./range-objects";
import { badArgument, Hole, type WireObject } from "./wire-object";

/** The looks of one or several areas. */
export function formatObject(
  sheet: SheetState,
  areas: readonly Area[],
): WireObject {
  const look = (name: string) => (value: unknown) => {
    for (const area of areas)
      for (let r = 0; r < area.rows; r += 1)
        for (let c = 0; c < area.columns; c += 1)
          changeLook(sheet, area.row + r, area.column + c, name, value);
  };
  return {
    kind: "RangeFormat",
    set: {
      HorizontalAlignment: look("horizontalAlignment"),
      WrapText: look("wrapText"),
      IndentLevel: look("indentLevel"),
      ColumnWidth: (points: number) => {
        for (const area of areas) {
          if (!isWholeColumns(area)) throw badArgument("width of some cells");
          for (let c = 0; c < area.columns; c += 1)
            sheet.widths.set(area.column + c, points);
        }
      },
      RowHeight: (points: number) => {
        if (points > 409) throw badArgument("a row is at most 409 points high");
        for (const area of areas) {
          if (!isWholeRows(area)) throw badArgument("height of some cells");
          for (let r = 0; r < area.rows; r += 1)
            sheet.heights.set(area.row + r, points);
        }
      },
    },
    open: {
      Font: () => ({
        kind: "RangeFont",
        set: {
          Bold: look("font.bold"),
          Italic: look("font.italic"),
          Color: look("font.color"),
          Size: look("font.size"),
          Name: look("font.name"),
        },
      }),
      Fill: () => ({ kind: "RangeFill", set: { Color: look("fill.color") } }),
      Borders: () => ({
        kind: "RangeBorderCollection",
        open: { "[]": (edge: string) => borderObject(sheet, areas, edge) },
      }),
      Protection: () => ({
        kind: "FormatProtection",
        get: {
          Locked: () => {
            const held = areas.flatMap((area) =>
              cellsOf(area).map(
                ([row, column]) =>
                  !sheet.cells.get(placeKey(row, column))?.unlocked,
              ),
            );
            return held.every((l) => l === held[0]) ? (held[0] ?? true) : null;
          },
        },
      }),
    },
  };
}

function borderObject(
  sheet: SheetState,
  areas: readonly Area[],
  edge: string,
): WireObject {
  const touched = (area: Area): readonly (readonly [number, number])[] =>
    cellsOf(area).filter(([row, column]) => {
      switch (edge) {
        case "EdgeTop":
          return row === area.row;
        case "EdgeBottom":
          return row === area.row + area.rows - 1;
        case "EdgeLeft":
          return column === area.column;
        case "EdgeRight":
          return column === area.column + area.columns - 1;
        default:
          throw new Hole(`the border ${edge}`);
      }
    });
  const look = (name: string) => (value: unknown) => {
    for (const [row, column] of areas.flatMap(touched))
      changeLook(sheet, row, column, `${edge}.${name}`, value);
  };
  return {
    kind: "RangeBorder",
    set: { Style: look("style"), Weight: look("weight"), Color: look("color") },
  };
}

function changeLook(
  sheet: SheetState,
  row: number,
  column: number,
  name: string,
  value: unknown,
): void {
  const before = sheet.cells.get(placeKey(row, column))?.looks;
  changeCell(sheet, row, column, { looks: { ...before, [name]: value } });
}

const cellsOf = (area: Area): readonly (readonly [number, number])[] =>
  Array.from({ length: area.rows * area.columns }, (_, i) => [
    area.row + Math.floor(i / area.columns),
    area.column + (i % area.columns),
  ]);
