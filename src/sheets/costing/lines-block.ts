import type { Block } from "../model";
import { line } from "./book-references";

/** Every line of the book side by side: rate, limit, fixed and running cost, and where one overtakes the other. */
export const linesBlock = (count: number): Block => ({
  kind: "comparison",
  name: "lines",
  title: "Which line",
  things: count,
  lines: [
    {
      name: "name",
      label: "Line",
      role: "subheading",
      content: { formula: `=${line("Line")}` },
    },
    {
      name: "usual",
      label: "Usual line of some product",
      content: {
        formula: '=IF(COUNTIF(Products[Usual line],{row.name})>0,"yes","no")',
      },
    },
    {
      name: "fill_s",
      label: "Filling time of this bottle",
      unit: "s",
      format: "0.0",
      content: {
        formula: `={fill_seconds}*${line("Fill seconds 250 mL")}/MIN(Lines[Fill seconds 250 mL])`,
      },
    },
    {
      name: "rate",
      label: "Bottles per hour",
      format: "#,##0",
      content: {
        formula: `=SYRUP.LINE_RATE(${line("Heads")},{row.fill_s},${line("Load and unload seconds")},${line("Running")},${line("Other station per hour")})`,
      },
    },
    {
      name: "limit",
      label: "Limited by",
      content: {
        formula: `=IF(OR(N(${line("Other station per hour")})=0,${line("Heads")}/({row.fill_s}+${line("Load and unload seconds")})*3600*${line("Running")}<=${line("Other station per hour")}),"heads",${line("Slowest other station")})`,
      },
    },
    {
      name: "setup",
      label: "Set-up",
      unit: "min",
      format: "0",
      content: { formula: `=${line("Setup minutes")}` },
    },
    {
      name: "clean",
      label: "Clean-down",
      unit: "min",
      format: "0",
      content: { formula: `=${line("Clean down minutes")}` },
    },
    {
      name: "purge",
      label: "Start and purge",
      unit: "lb",
      format: "0.0",
      content: { formula: `=${line("Purge lb")}` },
    },
    {
      name: "crew",
      label: "Crew, loaded wages",
      unit: "per h",
      format: "#,##0.00",
      content: {
        formula: "=SUMIFS(Crew[Cost per hour],Crew[Line],{row.name})",
      },
    },
    {
      name: "hours",
      label: "Hours for this run",
      unit: "h",
      format: "0.00",
      content: {
        formula:
          "=SYRUP.RUN_HOURS({bottles},{row.rate},{row.setup},{row.clean})",
      },
    },
    {
      name: "fixed",
      label: "Cost before the first bottle",
      unit: "crew and purged syrup",
      format: "#,##0.00",
      content: {
        formula:
          "=({row.setup}+{row.clean})/60*{row.crew}+{row.purge}*{bulk_price}",
      },
    },
    {
      name: "each",
      label: "Crew cost of each bottle",
      format: "0.0000",
      content: { formula: "={row.crew}/{row.rate}" },
    },
    {
      name: "cost",
      label: "Line cost of this run",
      role: "result",
      format: "#,##0.00",
      content: { formula: "={row.fixed}+{bottles}*{row.each}" },
    },
    {
      name: "crewed",
      label: "May be chosen, its crew known",
      content: {
        formula:
          '=IF(ISNUMBER({row.each}*{row.hours}),IF(AND({row.crew}>0,IF({line}="",{row.usual}="yes",{row.name}={line})),"yes","no"),"no")',
      },
    },
    {
      name: "counts",
      label: "In the choice at",
      format: "#,##0.00",
      content: {
        formula:
          '=IF(AND({row.crewed}="yes",ISNUMBER({row.cost})),{row.cost},"")',
      },
    },
    {
      name: "crossover",
      label: "Even with the chosen line at",
      unit: "bottles",
      format: "#,##0",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({chosen_no})),"",IF({n}={chosen_no},"",IFERROR(IF({row.each}<{each},SYRUP.LINE_CROSSOVER({fixed},{each},{row.fixed},{row.each}),SYRUP.LINE_CROSSOVER({row.fixed},{row.each},{fixed},{each})),"")))',
      },
    },
    {
      name: "says",
      label: "Against the chosen line",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({chosen_no})),"",IF(NOT(ISNUMBER({row.cost})),"crew or wages missing",IF({n}={chosen_no},"chosen",IF({row.usual}="no","no product\'s usual line",IF(NOT(ISNUMBER({row.crossover})),IF({row.cost}<{line_cost},"always cheaper","never cheaper"),IF({row.each}<{each},"cheaper from ","cheaper below ")&TEXT({row.crossover},"#,##0"))))))',
      },
    },
    {
      name: "told",
      label: "In words",
      role: "aside",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({chosen_no})),"",IF(OR({n}={chosen_no},{row.usual}="no"),"",{row.name}&": "&{row.says}&IF(NOT(ISNUMBER({row.crossover})),"; "," bottles; ")))',
      },
    },
  ],
});
