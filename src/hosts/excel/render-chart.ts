import { unusable } from "../../measures/cannot-answer";
import type { Chart } from "../../sheets/workbook";
import { onSheet } from "./on-sheet";
import type { Step } from "./step";

/** Draws a chart on a sheet over the cells it is meant for. */
export const chartStep = (sheet: string, chart: Chart): Step => ({
  bytes: 3000 + 1500 * chart.series.length,
  run: (context) => draw(context, sheet, chart),
});

const kinds = {
  bars: "BarClustered",
  "stacked bars": "BarStacked",
  columns: "ColumnClustered",
  lines: "Line",
} as const;

function draw(
  context: Excel.RequestContext,
  sheet: string,
  chart: Chart,
): void {
  const [first, ...others] = chart.series;
  if (!first) throw unusable(`the chart "${chart.title}" has nothing to draw`);
  const on = onSheet(context, { name: sheet });
  const drawn = on.charts.add(
    kinds[chart.kind],
    rangeOf(context, first.values),
    "Columns",
  );
  drawn.title.text = chart.title;
  const series = [
    drawn.series.getItemAt(0),
    ...others.map(({ name }) => drawn.series.add(name)),
  ];
  for (const [i, shown] of chart.series.entries()) {
    const line = series[i];
    if (!line) continue;
    line.name = shown.name;
    if (i > 0) line.setValues(rangeOf(context, shown.values));
    line.setXAxisValues(rangeOf(context, chart.categories));
    if (chart.kind === "lines") line.format.line.color = shown.color;
    else line.format.fill.setSolidColor(shown.color);
  }
  drawn.legend.visible = chart.series.length > 1;
  if (chart.unit !== undefined) drawn.axes.valueAxis.title.text = chart.unit;
  if (chart.format !== undefined)
    drawn.axes.valueAxis.numberFormat = chart.format;
  // Bars are read from the top, as the cells they show.
  if (chart.kind === "bars" || chart.kind === "stacked bars")
    drawn.axes.categoryAxis.reversePlotOrder = true;
  const { row, column, rows, columns } = chart.area;
  drawn.setPosition(
    on.getCell(row, column),
    on.getCell(row + rows - 1, column + columns - 1),
  );
}

/** `'Cost P250'!$B$4:$B$9` as a range. */
function rangeOf(
  context: Excel.RequestContext,
  reference: string,
): Excel.Range {
  const match =
    /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/.exec(
      reference,
    );
  const name = (match?.[1]?.replace(/''/g, "'") ?? match?.[2]) || undefined;
  if (name === undefined)
    throw unusable(
      `the chart's reference ${reference} names no cells of a sheet`,
    );
  return onSheet(context, { name }).getRange(
    (match?.[3] ?? "").replace(/\$/g, ""),
  );
}
