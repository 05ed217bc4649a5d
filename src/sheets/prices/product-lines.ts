import { labourBlock } from "../costing/labour-block";
import { linesBlock } from "../costing/lines-block";
import { syrupBlock } from "../costing/syrup-blocks";
import type { Block, Column } from "../model";
import { ownRow, productColumn } from "./product-column";
import { formulaOf, type Names, rebound } from "./rebind";

/** Figures of a line that stand once for each line, those of one figure side by side. */
const LINE_FIGURES = [
  ["rate", "bottles per hour", "#,##0"],
  ["cost", "line cost", "#,##0.00"],
  ["counts", "in the choice at", "#,##0.00"],
] as const;

/** A line's own figures from the farm's lines, and what a costing sheet keeps in cells of its own written out. */
function lineNames(block: Block, k: number): Names {
  const given: Names = {
    n: String(k),
    bottles: "{row.bottles}",
    line: '""',
    bulk_price: "{row.price_replacement}",
    fill_seconds: "INDEX(Products[Fill seconds],{row.no})",
    ...Object.fromEntries(
      ["name", "usual", "setup", "clean", "purge", "crew"].map((name) => [
        `row.${name}`,
        `INDEX({lines.${name}},${k})`,
      ]),
    ),
    ...Object.fromEntries(
      LINE_FIGURES.map(([name]) => [`row.${name}`, `{row.${name}_${k}}`]),
    ),
  };
  const writtenOut = (names: Names, name: string): Names => ({
    ...names,
    [`row.${name}`]: `(${rebound(formulaOf(block, name, {}), names)})`,
  });
  return ["fill_s", "hours", "fixed", "each", "crewed"].reduce(
    writtenOut,
    given,
  );
}

export function lineFigures(count: number): readonly Column[] {
  const block = linesBlock(count);
  return LINE_FIGURES.flatMap(([name, label, format]) =>
    Array.from({ length: count }, (_, i) =>
      productColumn(
        `${name}_${i + 1}`,
        `Line ${i + 1}: ${label}`,
        rebound(formulaOf(block, name, {}), lineNames(block, i + 1)),
        format,
      ),
    ),
  );
}

/** The line a product is cheapest on, and what follows from it. */
export function chosenLine(count: number): readonly Column[] {
  const across = (name: string): string =>
    `{row.${name}_1}:{row.${name}_${count}}`;
  const ofLine = (name: string): string =>
    `INDEX({lines.${name}},{row.chosen_no})`;
  const names: Names = {
    ...ownRow,
    "lines.counts": across("counts"),
    "row.rate": "{row.rate}",
    "row.setup": ofLine("setup"),
    "row.clean": ofLine("clean"),
    setup: ofLine("setup"),
    clean: ofLine("clean"),
    crew: ofLine("crew"),
  };
  return [
    productColumn(
      "chosen_no",
      "Line taken, row",
      formulaOf(labourBlock, "chosen_no", names),
    ),
    productColumn("line", "Line taken", `IFERROR(${ofLine("name")},"")`),
    productColumn(
      "rate",
      "Bottles per hour",
      `INDEX(${across("rate")},1,{row.chosen_no})`,
      "#,##0",
    ),
    productColumn(
      "hours",
      "Hours",
      formulaOf(linesBlock(count), "hours", names),
      "0.00",
    ),
    productColumn("purge", "Start and purge, lb", ofLine("purge"), "0.0"),
    productColumn(
      "need",
      "Syrup for the run, lb",
      formulaOf(syrupBlock("lots"), "need", names),
      "#,##0.0",
    ),
    productColumn(
      "labour",
      "Crew",
      formulaOf(labourBlock, "labour", names),
      "0.0000",
    ),
  ];
}
