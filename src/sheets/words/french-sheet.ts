import type {
  Area,
  Cell,
  Chart,
  PrintSetup,
  Sheet,
  Table,
  Validation,
} from "../workbook";
import { formulaInFrench, type Renamed } from "./french-formula";
import { layoutInFrench, saidInFrench } from "./french";
import { withRoom } from "./room";

/** Whose text stands in a cell: the layout's, an answer or choice that may be ours, or somebody's own. */
export type Whose = "layout" | "said" | "typed";

/** A sheet of ours in French. Figures, formats and places stay; what people typed stays as they typed it. */
export function sheetInFrench(
  sheet: Sheet,
  renamed: Renamed,
  whose: (cell: Cell) => Whose,
): Sheet {
  const { charts, print } = sheet;
  return withRoom({
    ...sheet,
    name: renamed.sheet(sheet.name),
    cells: sheet.cells.map((cell) => cellInFrench(cell, sheet, renamed, whose)),
    tables: sheet.tables.map((table) => tableInFrench(table, renamed)),
    validations: sheet.validations.map(validationInFrench),
    ...(charts
      ? { charts: charts.map((chart) => chartInFrench(chart, renamed)) }
      : {}),
    ...(print ? { print: printInFrench(print) } : {}),
  });
}

function cellInFrench(
  cell: Cell,
  { tables }: Sheet,
  renamed: Renamed,
  whose: (cell: Cell) => Whose,
): Cell {
  const { formula, value, note } = cell;
  const heading = tables.find(({ area }) => isHeading(area, cell));
  const text = (given: string): string => {
    if (heading) return renamed.heading(heading.name, given);
    const by = whose(cell);
    if (by === "typed") return given;
    return by === "layout" ? layoutInFrench(given) : saidInFrench(given);
  };
  return {
    ...cell,
    ...(typeof value === "string" ? { value: text(value) } : {}),
    ...(formula === undefined
      ? {}
      : { formula: formulaInFrench(formula, renamed) }),
    ...(note === undefined ? {} : { note: layoutInFrench(note) }),
  };
}

const isHeading = (area: Area, { row, column }: Cell): boolean =>
  row === area.row &&
  column >= area.column &&
  column < area.column + area.columns;

const tableInFrench = (table: Table, renamed: Renamed): Table => ({
  ...table,
  columns: table.columns.map((column) => ({
    ...column,
    heading: renamed.heading(table.name, column.heading),
    ...(column.formula === undefined
      ? {}
      : { formula: formulaInFrench(column.formula, renamed) }),
  })),
});

const validationInFrench = (validation: Validation): Validation => ({
  ...validation,
  ...(validation.rule.kind === "list"
    ? {
        rule: {
          ...validation.rule,
          choices: validation.rule.choices.map(saidInFrench),
        },
      }
    : {}),
  ...(validation.message === undefined
    ? {}
    : { message: layoutInFrench(validation.message) }),
});

const chartInFrench = (chart: Chart, renamed: Renamed): Chart => ({
  ...chart,
  title: layoutInFrench(chart.title),
  says: layoutInFrench(chart.says),
  categories: formulaInFrench(chart.categories, renamed),
  series: chart.series.map((one) => ({
    ...one,
    name: layoutInFrench(one.name),
    values: formulaInFrench(one.values, renamed),
  })),
  ...(chart.unit === undefined ? {} : { unit: layoutInFrench(chart.unit) }),
});

const printInFrench = (print: PrintSetup): PrintSetup => ({
  ...print,
  language: "fr",
  ...(print.foot === undefined ? {} : { foot: layoutInFrench(print.foot) }),
});
