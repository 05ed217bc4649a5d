import type { Block, Line } from "../model";
import { nextRow } from "./book-references";
import { beforeColumns, hoursBefore, seasonBeforeLines } from "./season-before";

const forItem = (text: string): string => `IF({row.item}="","",${text})`;

const IN_SEASON = "(Runs[Season]={season})";
/** "big" of "big-line hours": lines whose name starts so. */
const LINE_WORD = 'LEFT({row.driver},FIND("-line hours",{row.driver})-1)';
const lineHours = (line: string): string =>
  `IFERROR(LEFT(${line},LEN(${LINE_WORD}))=${LINE_WORD},FALSE)`;

/** How much of a bill's driver a season comes to. */
const driven = (season: string, hours: string): string =>
  `IF({row.driver}="runs",{${season}_runs},IF({row.driver}="lots",{${season}_lots},IF({row.driver}="lots and runs",{${season}_lots}+{${season}_runs},IF({row.driver}="gallons packed",{${season}_gallons},IFERROR(${hours},0)))))`;

const SO_FAR = driven(
  "season",
  `SUMPRODUCT((LEFT(Runs[Line],LEN(${LINE_WORD}))=${LINE_WORD})*${IN_SEASON}*Runs[Hours])`,
);

/**
 * The season's other bills, each by its own driver. A driver we do not know, or one that sums to nothing, withholds the cost.
 * In a `rolled` book a bill is shared over what the closed season did for as long as that is more of its driver.
 */
export const overheadsBlock = (rows: number, rolled = false): Block => ({
  kind: "table",
  name: "overheads",
  title: "Overheads of the season, by their drivers",
  rows,
  total: { label: "All overheads", columns: ["cost", "per_bottle"] },
  columns: [
    {
      name: "item",
      label: "Item",
      content: {
        formula: '=IF({row.row}="","",INDEX(Overheads[Item],{row.row}))',
      },
    },
    {
      name: "per_year",
      label: "A year",
      format: "#,##0.00",
      content: {
        formula: `=${forItem("INDEX(Overheads[Per year],{row.row})")}`,
      },
    },
    {
      name: "driver",
      label: "Shared by",
      content: {
        formula: `=${forItem("INDEX(Overheads[Shared by],{row.row})")}`,
      },
    },
    {
      name: "bulk",
      label: "To bulk",
      format: "0%",
      content: {
        formula: `=${forItem("N(INDEX(Overheads[Share to bulk],{row.row}))")}`,
      },
    },
    ...(rolled
      ? beforeColumns(SO_FAR, driven("before", hoursBefore(LINE_WORD)), forItem)
      : [
          {
            name: "whole",
            label: "Season so far",
            format: "#,##0.0",
            content: { formula: `=${forItem(SO_FAR)}` },
          },
        ]),
    {
      name: "own",
      label: "This run",
      format: "#,##0.0",
      content: {
        formula: `=${forItem(`IF(OR({row.driver}="runs",{row.driver}="lots and runs"),1,IF({row.driver}="lots",0,IF({row.driver}="gallons packed",{bottles}*{fill}/3785.411784,IF(${lineHours("{chosen_line}")},{hours},0))))`)}`,
      },
    },
    {
      name: "cost",
      label: "Of this run",
      format: "#,##0.00",
      content: {
        formula: `=${forItem('IF(N({row.whole})>0,{row.per_year}*(1-{row.bulk})*{row.own}/{row.whole},"")')}`,
      },
    },
    {
      name: "per_bottle",
      label: "A bottle",
      format: "0.0000",
      content: {
        formula: `=${forItem('IF(NOT(ISNUMBER({row.cost})),"",{row.cost}/{bottles})')}`,
      },
    },
    {
      name: "needs",
      label: "Missing",
      role: "check",
      content: {
        formula: `=${forItem('IF(NOT(ISNUMBER({row.cost})),"what shares out "&{row.item}&"; ","")')}`,
      },
    },
    {
      name: "row",
      label: "Row",
      content: {
        formula: `=${nextRow("Overheads", "Season", "{season}", "{row_above.row}")}`,
      },
    },
  ],
});

type LinesBlock = Extract<Block, { readonly kind: "lines" }>;

const count = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "calculated",
  format: "#,##0",
  content: { formula: `=${formula}` },
});

const gallons = (name: string, label: string, formula: string): Line => ({
  ...count(name, label, formula),
  unit: "gal",
  format: "#,##0.0",
});

/** What this season has done so far, and in a `rolled` book what the one that stands in did. */
export const seasonBlock = (rolled = false): LinesBlock => ({
  kind: "lines",
  title: "The season the overheads are shared over",
  lines: [
    { ...count("season", "Season", "YEAR({as_of})"), format: "0" },
    count("season_runs", "Runs so far", "COUNTIFS(Runs[Season],{season})"),
    count("season_lots", "Lots bought", "COUNTIFS(Lots[Crop year],{season})"),
    gallons(
      "season_gallons",
      "Packed so far",
      "SUMIFS(Runs[Gallons],Runs[Season],{season})",
    ),
    ...(rolled ? seasonBeforeLines : []),
  ],
});
