import { overheadsBlock } from "../costing/overheads-block";
import type { Block, Column } from "../model";
import { columnOf } from "../prices/rebind";

/** The season's bills: who carries each by its own driver, and what nobody carries. */
export function billsBlock(rows: number): Block {
  const costing = overheadsBlock(rows);
  return {
    kind: "table",
    name: "bills",
    title: "Bills of the season, and who carries them",
    rows,
    total: {
      label: "All bills",
      columns: ["per_year", "to_bulk", "to_runs", "to_lots", "gap"],
    },
    columns: [
      columnOf(costing, "item"),
      columnOf(costing, "per_year"),
      columnOf(costing, "driver"),
      column("to_bulk", "Totes carry", "{row.per_year}*{row.bulk}"),
      column(
        "to_runs",
        "Runs carry",
        "IF(N({row.whole})>0,{row.per_year}-{row.to_bulk}-{row.to_lots},0)",
      ),
      column(
        "to_lots",
        "Lots carry",
        'IF(N({row.whole})>0,({row.per_year}-{row.to_bulk})*IF({row.driver}="lots",1,IF({row.driver}="lots and runs",{season_lots}/{row.whole},0)),0)',
      ),
      column(
        "gap",
        "Nobody carries",
        "{row.per_year}-{row.to_bulk}-{row.to_lots}-{row.to_runs}",
      ),
      {
        ...column(
          "carried",
          "Carried",
          'IF({row.per_year}=0,"",1-{row.gap}/{row.per_year})',
        ),
        format: "0.0%",
      },
      {
        name: "says",
        label: "Verdict",
        role: "check",
        content: {
          formula:
            '=IF({row.item}="","",IF(N({row.whole})>0,"ok","nothing this season shares it out by """&{row.driver}&""""))',
        },
      },
      columnOf(costing, "bulk"),
      columnOf(costing, "whole"),
      column(
        "rate",
        "For each",
        'IF(N({row.whole})>0,({row.per_year}-{row.to_bulk})/{row.whole},"")',
        "#,##0.0000",
      ),
      column("net", "Less totes", "{row.per_year}-{row.to_bulk}"),
      {
        name: "word",
        label: "Lines whose name starts with",
        content: {
          formula:
            '=IFERROR(LEFT({row.driver},FIND("-line hours",{row.driver})-1),"")',
        },
      },
      columnOf(costing, "row"),
    ],
  };
}

const column = (
  name: string,
  label: string,
  formula: string,
  format = "#,##0.00",
): Column => ({
  name,
  label,
  format,
  content: { formula: `=IF({row.item}="","",${formula})` },
});
