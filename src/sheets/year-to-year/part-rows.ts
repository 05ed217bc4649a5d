import { nextRow } from "../costing/book-references";
import { materialsBlock } from "../costing/materials-block";
import { overheadsBlock } from "../costing/overheads-block";
import type { Block } from "../model";
import { columnOf } from "../prices/rebind";

/** The product's parts, and what the book does not say of them. */
export const partsBlock = (rows: number): Block => ({
  kind: "table",
  name: "parts",
  title: "Its parts",
  rows,
  columns: [
    {
      name: "part",
      label: "Part",
      content: {
        formula: '=IF({row.row}="","",INDEX(ProductMaterials[Part],{row.row}))',
      },
    },
    {
      name: "needs",
      label: "Missing",
      role: "check",
      content: {
        formula:
          '=IF({row.row}="","",IF(COUNTIF(Parts[Part],{row.part})=0,{row.part}&" in Parts; ",IF(COUNTIF(PartPrices[Part],{row.part})=0,"a price for "&{row.part}&"; ","")))',
      },
    },
    {
      name: "row",
      label: "Row",
      content: {
        formula: `=${nextRow("ProductMaterials", "Product", "{product}", "{row_above.row}")}`,
      },
    },
  ],
});

/** A row for each part of each run, priced for that run as a costing sheet prices it. */
export function materialRows(runs: number, parts: number): Block {
  const materials = materialsBlock(parts);
  const run = (column: string): string =>
    `INDEX({runs.${column}},{row.run_no})`;
  const cases = `ROUNDUP(${run("bottles")}/{per_case},0)`;
  const own = {
    bottles: run("bottles"),
    cases,
    pallets: `ROUNDUP(${cases}/{per_pallet},0)`,
    fill: "{target_fill}",
  };
  return {
    kind: "table",
    name: "materials",
    title: "Materials of each run, at the book's one price list",
    rows: runs * parts,
    columns: [
      {
        name: "run_no",
        label: "Run, row",
        content: { formula: `=INT(({n}-1)/${parts})+1` },
      },
      {
        name: "row",
        label: "Row",
        content: {
          formula: `=IF(INDEX({runs.side},{row.run_no})="","",INDEX({parts.row},MOD({n}-1,${parts})+1))`,
        },
      },
      ...[
        "part",
        "per",
        "bought",
        "carton",
        "needed",
        "drawn",
        "least",
        "order_cost",
        "freight",
      ].map((name) => columnOf(materials, name, own)),
    ],
  };
}

/** One season's bills as rates of their drivers. */
export function billsOf(side: "then" | "now", rows: number): Block {
  const season = side === "now" ? "{season}" : "{against}";
  const other = side === "now" ? "{then.item}" : "{now.item}";
  const costing = overheadsBlock(rows);
  const names = {
    season,
    season_runs: `COUNTIFS(Runs[Season],${season})`,
    season_lots: `COUNTIFS(Lots[Crop year],${season})`,
    season_gallons: `SUMIFS(Runs[Gallons],Runs[Season],${season})`,
  };
  return {
    kind: "table",
    name: side,
    title:
      side === "now" ? "Bills of the season" : "Bills of the season before",
    rows,
    columns: [
      ...["item", "per_year", "driver", "bulk", "whole"].map((name) =>
        columnOf(costing, name, names),
      ),
      {
        name: "rate",
        label: "For each",
        format: "#,##0.0000",
        content: {
          formula:
            '=IF({row.item}="","",IF(N({row.whole})>0,{row.per_year}*(1-{row.bulk})/{row.whole},""))',
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
      {
        name: "both",
        label: "In both seasons",
        content: {
          formula: `=IF({row.item}="","",IF(COUNTIF(${other},{row.item})>0,"yes","no"))`,
        },
      },
      {
        name: "needs",
        label: "Missing",
        role: "check",
        content: {
          formula: `=IF({row.item}="","",IF(ISNUMBER({row.rate}),"","what shares out "&{row.item}&" in "&${season}&"; "))`,
        },
      },
      columnOf(costing, "row", names),
    ],
  };
}
