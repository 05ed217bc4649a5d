import type { SheetChart } from "hucre/xlsx";
import type { Chart, Sheet } from "../../sheets/workbook";
import { textInFile } from "./worksheet-text";

/** By this name in its drawing a chart is known again as one that the model holds whole. */
export const chartMark = "Tare & Tally picture";

/** The charts of a sheet as the writing library takes them; cells are referred to, no figure is copied into the chart. */
export const chartsToFile = (sheet: Sheet): SheetChart[] =>
  (sheet.charts ?? []).map(chartToFile);

function chartToFile(chart: Chart): SheetChart {
  const { row, column, rows, columns } = chart.area;
  const across = chart.kind === "bars" || chart.kind === "stacked bars";
  return {
    ...shapes[chart.kind],
    title: textInFile(chart.title),
    altText: textInFile(chart.says),
    series: chart.series.map(({ name, values, color }) => ({
      name: textInFile(name),
      values: textInFile(values),
      categories: textInFile(chart.categories),
      color: color.slice(1).toUpperCase(),
    })),
    anchor: {
      from: { row, col: column },
      to: { row: row + rows, col: column + columns },
    },
    legend: chart.series.length > 1 ? "bottom" : false,
    titleFontSize: 12,
    titleBold: true,
    axes: {
      // Bars are listed from the bottom up unless the axis is turned round, and then its figures stand on top.
      x: across ? { ...bare, reverse: true } : bare,
      y: {
        ...bare,
        ...(across ? { crosses: "max" } : {}),
        gridlines: { major: true },
        ...(chart.unit === undefined ? {} : { title: textInFile(chart.unit) }),
        ...(chart.format === undefined
          ? {}
          : { numberFormat: { formatCode: chart.format } }),
      },
    },
  };
}

const bare = { majorTickMark: "none", minorTickMark: "none" } as const;

const shapes: Readonly<
  Record<Chart["kind"], Pick<SheetChart, "type"> & Partial<SheetChart>>
> = {
  bars: { type: "bar", barGrouping: "clustered", gapWidth: 60 },
  "stacked bars": {
    type: "bar",
    barGrouping: "stacked",
    overlap: 100,
    gapWidth: 60,
  },
  columns: { type: "column", barGrouping: "clustered", gapWidth: 60 },
  lines: { type: "line", lineGrouping: "standard" },
};
