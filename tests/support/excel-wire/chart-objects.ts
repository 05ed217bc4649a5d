import { addressOf } from "./addresses";
import type { ChartState, SheetState } from "./book-state";
import { refuseProtected, type RangeObject } from "./range-objects";
import { badArgument, Hole, refuseText, type WireObject } from "./wire-object";

/** The drawn pictures of a sheet. */
export function chartCollection(sheet: SheetState): WireObject {
  return {
    kind: "ChartCollection",
    call: { GetCount: () => sheet.charts.length },
    open: {
      GetItemAt: (index: number) => {
        const chart = sheet.charts[index];
        if (!chart) throw badArgument(`chart ${index}`);
        return chartObject(sheet, chart);
      },
      Add: (type: string, source: RangeObject) => {
        refuseProtected(sheet);
        const chart: ChartState = {
          name: `Chart ${sheet.charts.length + 1}`,
          type,
          title: "",
          series: [
            {
              name: "",
              values: addressOf(source.area, source.sheet.name),
              categories: "",
              color: "",
            },
          ],
          from: "",
          to: "",
          more: {},
        };
        sheet.charts.push(chart);
        return chartObject(sheet, chart);
      },
    },
  };
}

function chartObject(sheet: SheetState, chart: ChartState): WireObject {
  const keep = (name: string) => (value: unknown) => {
    chart.more[name] = value;
  };
  return {
    kind: "Chart",
    get: { Name: () => chart.name },
    set: {
      Name: (name: string) => {
        chart.name = name;
      },
    },
    open: {
      Title: () => ({
        kind: "ChartTitle",
        set: {
          Text: (text: string) => {
            chart.title = text;
          },
        },
      }),
      Legend: () => ({ kind: "ChartLegend", set: { Visible: keep("legend") } }),
      Axes: () => ({
        kind: "ChartAxes",
        open: {
          ValueAxis: () => ({
            kind: "ChartAxis",
            set: { NumberFormat: keep("valueFormat") },
            open: {
              Title: () => ({
                kind: "ChartAxisTitle",
                set: { Text: keep("valueTitle"), Visible: keep("valueTitled") },
              }),
            },
          }),
          CategoryAxis: () => ({
            kind: "ChartAxis",
            set: { ReversePlotOrder: keep("reversed") },
          }),
        },
      }),
      Series: () => ({
        kind: "ChartSeriesCollection",
        open: {
          GetItemAt: (index: number) => seriesObject(chart, index),
          Add: (name: string) => {
            chart.series.push({ name, values: "", categories: "", color: "" });
            return seriesObject(chart, chart.series.length - 1);
          },
        },
      }),
    },
    call: {
      Delete: () => void sheet.charts.splice(sheet.charts.indexOf(chart), 1),
      SetPosition: (from: RangeObject, to: RangeObject) => {
        refuseText(from);
        refuseText(to);
        chart.from = addressOf(from.area, from.sheet.name);
        chart.to = addressOf(to.area, to.sheet.name);
      },
    },
  };
}

function seriesObject(chart: ChartState, index: number): WireObject {
  const series = chart.series[index];
  if (!series) throw new Hole(`series ${index} of a chart`);
  return {
    kind: "ChartSeries",
    set: {
      Name: (name: string) => {
        series.name = name;
      },
    },
    open: {
      Format: () => ({
        kind: "ChartSeriesFormat",
        open: {
          Fill: () => ({
            kind: "ChartFill",
            call: {
              SetSolidColor: (color: string) => {
                series.color = color;
              },
            },
          }),
          Line: () => ({
            kind: "ChartLineFormat",
            set: {
              Color: (color: string) => {
                series.color = color;
              },
            },
          }),
        },
      }),
    },
    call: {
      SetValues: (range: RangeObject) => {
        series.values = addressOf(range.area, range.sheet.name);
      },
      SetXAxisValues: (range: RangeObject) => {
        series.categories = addressOf(range.area, range.sheet.name);
      },
    },
  };
}
