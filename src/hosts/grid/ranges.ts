import type { IRange } from "@univerjs/core";
import type { Area } from "../../sheets/workbook";

type Corners = Pick<
  IRange,
  "startRow" | "startColumn" | "endRow" | "endColumn"
>;

export const areaToRange = (area: Area): Corners => ({
  startRow: area.row,
  startColumn: area.column,
  endRow: area.row + area.rows - 1,
  endColumn: area.column + area.columns - 1,
});

export const rangeToArea = (range: Corners): Area => ({
  row: range.startRow,
  column: range.startColumn,
  rows: range.endRow - range.startRow + 1,
  columns: range.endColumn - range.startColumn + 1,
});
