import { productBlock } from "../costing/product-blocks";
import { newestBulkPrice, syrupBlock } from "../costing/syrup-blocks";
import type { Block, Column } from "../model";
import { productColumn as column, ownRow } from "./product-column";
import { costColumns } from "./product-costs";
import { chosenLine, lineFigures } from "./product-lines";
import { formulaOf } from "./rebind";

export interface ProductRowFacts {
  readonly rows: number;
  readonly lines: number;
  /** Whether aged syrup comes out of barrels of the book. */
  readonly barrels: boolean;
  /** The book was made by a season's roll. */
  readonly rolled: boolean;
  /** The cells of the price list a run is typed in, as a reference. */
  readonly runs: string;
}

/** One row a product: its run, its syrup, the line it is cheapest on, and its cost three ways. */
export const productRowsBlock = (facts: ProductRowFacts): Block => ({
  kind: "table",
  name: "products",
  title: "Cost of every product for its usual run",
  rows: facts.rows,
  columns: [
    ...identity(facts),
    ...syrup(facts),
    ...lineFigures(facts.lines),
    ...chosenLine(facts.lines),
    ...costColumns(),
  ],
});

function identity({ runs, barrels }: ProductRowFacts): readonly Column[] {
  const block = productBlock({
    product: "",
    bottles: 0,
    lineNames: [],
    lossIsSet: false,
    newestDay: "0",
  });
  const from = (name: string): string =>
    formulaOf(block, name, {
      ...ownRow,
      product_row: "{row.no}",
      per_case: "INDEX(Products[Bottles per case],{row.no})",
    });
  return [
    {
      name: "product",
      label: "Product",
      content: {
        formula:
          '=IF({row.no}>ROWS(Products[Product]),"",INDEX(Products[Product],{row.no}))',
      },
    },
    { name: "no", label: "Row", content: { formula: "={n}" } },
    column("bottles", "Bottles in its run", `INDEX(${runs},{row.no})`, "#,##0"),
    column("fill", "Fill mL", from("fill"), "#,##0.0"),
    column("cases", "Cases", from("cases"), "#,##0"),
    column("pallets", "Pallets", from("pallets"), "#,##0"),
    column("kind", "Syrup", from("kind")),
    column(
      "pool",
      "Drawn from",
      `${barrels ? 'IF({row.kind}="Oak","barrels",{row.kind})' : "{row.kind}"}&"|"&${from("organic")}`,
    ),
  ];
}

const MINE = "--({stock.pool}={row.pool})";

function syrup({ barrels, rolled }: ProductRowFacts): readonly Column[] {
  const aged = (yes: string, no: string): string =>
    barrels ? `IF(LEFT({row.pool},8)="barrels|",${yes},${no})` : no;
  const agedBrix = formulaOf(syrupBlock("barrels", rolled), "brix", {
    ...ownRow,
    brix_typed: '""',
  });
  const inPool = "COUNTIFS({barrels.pool},{row.pool})";
  return [
    column(
      "stock",
      "In stock, lb",
      "SUMIFS({stock.left},{stock.pool},{row.pool})",
      "#,##0",
    ),
    column(
      "brix",
      "Brix at 68 °F",
      aged(
        agedBrix,
        `IF({row.stock}>0,SUMPRODUCT(${MINE},{stock.left},{stock.brix})/{row.stock},NA())`,
      ),
      "0.00",
    ),
    column(
      "lb_per_bottle",
      "Syrup drawn for a bottle, lb",
      formulaOf(syrupBlock("lots"), "lb_per_bottle", ownRow),
      "0.0000",
    ),
    column(
      "price_replacement",
      "Today's price per lb",
      aged(
        `IF(OR(${inPool}=0,SUMPRODUCT(--({barrels.pool}={row.pool}),--ISNUMBER({barrels.today}))<>${inPool}),NA(),SUMPRODUCT(--({barrels.pool}={row.pool}),{barrels.today},{barrels.out})/SUMIFS({barrels.out},{barrels.pool},{row.pool}))`,
        newestBulkPrice("{row.kind}"),
      ),
      "0.0000",
    ),
    column(
      "dearer",
      "Its price for each dollar of bulk",
      aged(
        "SUMPRODUCT(--({barrels.pool}={row.pool}),{barrels.dearer},{barrels.out})/SUMIFS({barrels.out},{barrels.pool},{row.pool})",
        "1",
      ),
      "0.0000",
    ),
  ];
}
