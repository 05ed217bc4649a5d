import type { Block } from "../model";
import { nextRow } from "./book-references";

const forItem = (text: string): string => `IF({row.item}="","",${text})`;

const IN_SEASON = "(Runs[Season]={season})";
/** "big" of "big-line hours": lines whose name starts so. */
const LINE_WORD = 'LEFT({row.driver},FIND("-line hours",{row.driver})-1)';
const lineHours = (line: string): string =>
  `IFERROR(LEFT(${line},LEN(${LINE_WORD}))=${LINE_WORD},FALSE)`;

/** The season's other bills, each by its own driver. A driver we do not know, or one that sums to nothing, withholds the cost. */
export const overheadsBlock = (rows: number): Block => ({
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
    {
      name: "whole",
      label: "Season so far",
      format: "#,##0.0",
      content: {
        formula: `=${forItem(`IF({row.driver}="runs",{season_runs},IF({row.driver}="lots",{season_lots},IF({row.driver}="lots and runs",{season_lots}+{season_runs},IF({row.driver}="gallons packed",{season_gallons},IFERROR(SUMPRODUCT((LEFT(Runs[Line],LEN(${LINE_WORD}))=${LINE_WORD})*${IN_SEASON}*Runs[Hours]),0)))))`)}`,
      },
    },
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

export const seasonBlock: Block = {
  kind: "lines",
  title: "The season the overheads are shared over",
  lines: [
    {
      name: "season",
      label: "Season",
      role: "calculated",
      format: "0",
      content: { formula: "=YEAR({as_of})" },
    },
    {
      name: "season_runs",
      label: "Runs so far",
      role: "calculated",
      format: "#,##0",
      content: { formula: "=COUNTIFS(Runs[Season],{season})" },
    },
    {
      name: "season_lots",
      label: "Lots bought",
      role: "calculated",
      format: "#,##0",
      content: { formula: "=COUNTIFS(Lots[Crop year],{season})" },
    },
    {
      name: "season_gallons",
      label: "Packed so far",
      unit: "gal",
      role: "calculated",
      format: "#,##0.0",
      content: { formula: "=SUMIFS(Runs[Gallons],Runs[Season],{season})" },
    },
  ],
};
