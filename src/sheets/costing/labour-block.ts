import type { Block } from "../model";

/** The line taken, and what the crew costs on it. */
export const labourBlock: Block = {
  kind: "lines",
  title: "The line taken, and its crew",
  lines: [
    {
      name: "chosen_no",
      label: "Row in Lines",
      role: "calculated",
      content: { formula: "=MATCH(MIN({lines.counts}),{lines.counts},0)" },
    },
    {
      name: "chosen_line",
      label: "Line",
      role: "result",
      content: { formula: "=INDEX({lines.name},{chosen_no})" },
    },
    {
      name: "rate",
      label: "Rate",
      unit: "bottles per h",
      role: "calculated",
      format: "#,##0",
      content: { formula: "=INDEX({lines.rate},{chosen_no})" },
    },
    {
      name: "limited_by",
      label: "Limited by",
      role: "calculated",
      content: { formula: "=INDEX({lines.limit},{chosen_no})" },
    },
    {
      name: "crew",
      label: "Crew, loaded wages",
      unit: "per h",
      role: "calculated",
      format: "#,##0.00",
      content: { formula: "=INDEX({lines.crew},{chosen_no})" },
    },
    {
      name: "setup",
      label: "Set-up",
      unit: "min",
      role: "calculated",
      format: "0",
      content: { formula: "=INDEX({lines.setup},{chosen_no})" },
    },
    {
      name: "clean",
      label: "Clean-down",
      unit: "min",
      role: "calculated",
      format: "0",
      content: { formula: "=INDEX({lines.clean},{chosen_no})" },
    },
    {
      name: "hours",
      label: "Hours with set-up and clean-down",
      unit: "h",
      role: "calculated",
      format: "0.00",
      content: { formula: "=INDEX({lines.hours},{chosen_no})" },
    },
    {
      name: "fixed",
      label: "Cost before the first bottle",
      role: "calculated",
      format: "#,##0.00",
      content: { formula: "=INDEX({lines.fixed},{chosen_no})" },
    },
    {
      name: "each",
      label: "Crew cost of each bottle",
      role: "calculated",
      format: "0.0000",
      content: { formula: "=INDEX({lines.each},{chosen_no})" },
    },
    {
      name: "line_cost",
      label: "Line cost of this run",
      role: "calculated",
      format: "#,##0.00",
      content: { formula: "=INDEX({lines.cost},{chosen_no})" },
    },
    {
      name: "labour_fixed",
      label: "Set-up and clean-down, a bottle",
      role: "calculated",
      format: "0.0000",
      content: { formula: "=({setup}+{clean})/60*{crew}/{bottles}" },
    },
    {
      name: "labour",
      label: "Crew cost of a bottle in all",
      role: "result",
      format: "0.0000",
      content: {
        formula:
          "=SYRUP.LABOR_PER_BOTTLE({crew},{bottles},{rate},{setup},{clean})",
      },
    },
  ],
};
