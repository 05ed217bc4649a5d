import { nextRow } from "../costing/book-references";
import type { Block, Column } from "../model";

/** The ways a bill is shared, and the column of the runs that measures each. */
export const ways = [
  { way: "runs", label: "Runs", column: "one" },
  { way: "lots_drawn", label: "Lots drawn", column: "lots" },
  { way: "lots_and_runs", label: "Lots and runs", column: "one" },
  { way: "gallons", label: "Gallons packed", column: "gallons" },
  { way: "products", label: "Products", column: "part" },
  { way: "revenue", label: "Revenue", column: "revenue" },
] as const;

const forRun = (text: string): string => `IF({row.row}="","",${text})`;
const own = (heading: string): string => `INDEX(Runs[${heading}],{row.row})`;

const LATEST =
  "SUMPRODUCT(MAX((Prices[Product]={row.product})*(Prices[Channel]={channel})*(Prices[Valid from]<={as_of})*Prices[Valid from]))";
const LATEST_ANYWHERE =
  "SUMPRODUCT(MAX((Prices[Product]={row.product})*(Prices[Valid from]<={as_of})*Prices[Valid from]))";

/** Every run of the season, what it has done that a bill could be shared by, and what it carries under each. */
export const runRows = (rows: number): Block => ({
  kind: "table",
  name: "runs",
  title: "Runs of the season, and what each carries of the bills compared",
  rows,
  total: {
    label: "All runs",
    columns: [
      "bottles",
      "gallons",
      "hours",
      "lots",
      "part",
      "revenue",
      ...ways.map(({ way }) => `by_${way}`),
    ],
  },
  columns: [
    column("run", "Run", own("Run")),
    column("product", "Product", own("Product")),
    column("line", "Line", own("Line")),
    column("bottles", "Bottles", own("Good bottles"), "#,##0"),
    ...ways.map(({ way, label, column: measure }) =>
      column(
        `by_${way}`,
        `By ${label.toLowerCase()}`,
        `IF(ISNUMBER({ways.${way}.each}),{ways.${way}.each}*{row.${measure}},"")`,
        "#,##0.00",
      ),
    ),
    column("gallons", "Gallons", own("Gallons"), "#,##0.0"),
    column("hours", "Hours", own("Hours"), "#,##0.00"),
    column("lots", "Lots drawn", "COUNTIFS(LotUse[To],{row.run})", "0"),
    column(
      "part",
      "Part of its product",
      "{row.bottles}/SUMIFS({runs.bottles},{runs.product},{row.product})",
      "0.00",
    ),
    column(
      "price",
      "Valued at",
      `IF(${LATEST}>0,AVERAGEIFS(Prices[Price],Prices[Product],{row.product},Prices[Channel],{channel},Prices[Valid from],${LATEST}),IF(${LATEST_ANYWHERE}>0,AVERAGEIFS(Prices[Price],Prices[Product],{row.product},Prices[Valid from],${LATEST_ANYWHERE}),""))`,
      "#,##0.00",
    ),
    column(
      "revenue",
      "Revenue",
      'IF(ISNUMBER({row.price}),{row.bottles}*{row.price},"")',
      "#,##0.00",
    ),
    column("one", "Run", "1", "0"),
    column(
      "needs",
      "Missing",
      'IF(ISNUMBER({row.price}),"","a price for "&{row.product}&"; ")',
    ),
    {
      name: "row",
      label: "Row",
      content: {
        formula: `=${nextRow("Runs", "Season", "{season}", "{row_above.row}")}`,
      },
    },
  ],
});

function column(
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column {
  return {
    name,
    label,
    ...(format === undefined ? {} : { format }),
    content: { formula: `=${forRun(formula)}` },
  };
}
