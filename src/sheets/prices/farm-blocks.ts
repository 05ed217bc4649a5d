import { channelsBlock } from "../costing/result-blocks";
import { heatBlock } from "../costing/heat-block";
import { linesBlock } from "../costing/lines-block";
import { missingBlock } from "../costing/checks-block";
import { overheadsBlock, seasonBlock } from "../costing/overheads-block";
import { setting } from "../costing/book-references";
import type { Block, Line } from "../model";
import { columnOf, formulaOf } from "./rebind";

const number = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "calculated",
  content: { formula: `=${formula}` },
});

/** Lines of a costing sheet that do not depend on the product. */
const heatLine = (name: string): Line => {
  if (heatBlock.kind !== "lines") throw new Error("Heat is a list of lines");
  const line = heatBlock.lines.find((one) => one.name === name);
  if (!line) throw new Error(`A costing has no line "${name}"`);
  return line;
};

export interface FarmInputs {
  /** References to the cells of the price list a person types in. */
  readonly asOf: string;
  readonly loss: string;
  readonly ending: string;
}

/** What every product's costing shares: the day, heat, and what a run, a gallon and an hour carry of the season's bills. */
export const farmBlock = (
  { asOf, loss, ending }: FarmInputs,
  rolled: boolean,
): Block => ({
  kind: "lines",
  title: "The same for every product",
  lines: [
    { ...number("as_of", "Prices as of", asOf), format: "yyyy-mm-dd" },
    {
      ...number("loss", "Syrup lost between drum and bottle", loss),
      format: "0.0%",
    },
    { ...number("ending", "Prices end in", ending), format: "0.00" },
    number(
      "pack_temperature",
      "Filling temperature",
      setting("Pack temperature"),
    ),
    ...["fuel", "fuel_price", "fuel_heat", "efficiency"].map(heatLine),
    number(
      "heat_known",
      "Figures for heat known",
      formulaOf(missingBlock("lots"), "heat_known", {}),
    ),
    ...seasonBlock(rolled).lines,
    number(
      "overhead_per_run",
      "Overheads of a run",
      'SUMIFS({overheads.rate},{overheads.driver},"runs")+SUMIFS({overheads.rate},{overheads.driver},"lots and runs")',
    ),
    number(
      "overhead_per_gallon",
      "Overheads of a gallon",
      'SUMIFS({overheads.rate},{overheads.driver},"gallons packed")',
    ),
    {
      ...number(
        "farm_needs",
        "Missing for every product",
        '{overheads.needs&}&IF(ISNUMBER({heat_known}),"","Energy rows for fuel, its price and heat, efficiency, hold loss and start temperature; ")',
      ),
      role: "check",
    },
  ],
});

/** The season's bills, each as the rate of its driver. */
export const billsBlock = (rows: number, rolled: boolean): Block => {
  const bills = overheadsBlock(rows, rolled);
  return {
    kind: "table",
    name: "overheads",
    title: "Overheads of the season, as rates of their drivers",
    rows,
    columns: [
      ...[
        "item",
        "per_year",
        "driver",
        "bulk",
        ...(rolled ? ["so_far", "before"] : []),
        "whole",
        ...(rolled ? ["estimated"] : []),
      ].map((name) => columnOf(bills, name)),
      {
        name: "rate",
        label: "For each",
        format: "#,##0.0000",
        content: {
          formula: `=${formulaOf(bills, "cost", { "row.own": "1" })}`,
        },
      },
      {
        name: "word",
        label: "Lines whose name starts with",
        content: {
          formula:
            '=IFERROR(LEFT({row.driver},FIND("-line hours",{row.driver})-1),"")',
        },
      },
      columnOf(bills, "needs", { "row.cost": "{row.rate}" }),
      columnOf(bills, "row"),
    ],
  };
};

/** What a line takes whatever it fills. */
export const lineRatesBlock = (rows: number): Block => {
  const lines = linesBlock(rows);
  const figure = (name: string, label: string, format?: string) => ({
    name,
    label,
    ...(format === undefined ? {} : { format }),
    content: { formula: `=${formulaOf(lines, name, {})}` },
  });
  return {
    kind: "table",
    name: "lines",
    title: "Lines",
    rows,
    columns: [
      figure("name", "Line"),
      figure("usual", "Usual line of some product"),
      figure("setup", "Set-up, min", "0"),
      figure("clean", "Clean-down, min", "0"),
      figure("purge", "Start and purge, lb", "0.0"),
      figure("crew", "Crew, loaded wages per h", "#,##0.00"),
      {
        name: "hour_rate",
        label: "Overheads of an hour",
        format: "#,##0.0000",
        content: {
          formula:
            '=SUMPRODUCT(--({overheads.word}<>""),--(LEFT({row.name},LEN({overheads.word}))={overheads.word}),{overheads.rate})',
        },
      },
    ],
  };
};

/** What a channel asks for and takes. */
export const channelTermsBlock = (rows: number): Block => {
  const channels = channelsBlock(rows);
  return {
    kind: "table",
    name: "channels",
    title: "Channels",
    rows,
    columns: ["channel", "goal", "shares", "fixed", "by_bottle"].map((name) =>
      columnOf(channels, name),
    ),
  };
};
