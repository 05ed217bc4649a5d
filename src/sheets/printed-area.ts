import type { Area, Sheet } from "./workbook";

type Printed = Pick<Sheet, "print" | "cells" | "charts">;

/** The cells a sheet prints, from its first one; undefined where it prints all there is. */
export function printedArea(sheet: Printed): Area | undefined {
  const upTo = sheet.print?.upTo;
  if (!upTo) return undefined;
  const { columns, rows = rowsIn(sheet) } = upTo;
  return { row: 0, column: 0, rows, columns };
}

/** Rows down to the last cell or chart. */
export const rowsIn = ({
  cells,
  charts = [],
}: Pick<Printed, "cells" | "charts">): number =>
  charts.reduce(
    (last, { area }) => Math.max(last, area.row + area.rows),
    cells.reduce((last, { row }) => Math.max(last, row + 1), 1),
  );
