import { materialsBlock } from "../costing/materials-block";
import type { Block } from "../model";
import { columnOf, formulaOf } from "./rebind";

const product = (column: string): string =>
  `INDEX({products.${column}},{row.product_no})`;

/** A row for each row of Product materials, priced for the usual run of its product as the product's costing sheet prices it. */
export const materialRowsBlock = (rows: number): Block => {
  const materials = materialsBlock(rows);
  const own = {
    bottles: product("bottles"),
    cases: product("cases"),
    pallets: product("pallets"),
    fill: product("fill"),
    "row.row": "{n}",
  };
  // What a costing sheet shows in columns of its own is written out here: thousands of rows need fewer cells.
  const writtenOut = {
    ...own,
    "row.description": formulaOf(materials, "description", own),
    "row.per": formulaOf(materials, "per", own),
  };
  return {
    kind: "table",
    name: "materials",
    title: "Materials of every product, for its usual run",
    rows,
    columns: [
      {
        name: "product_no",
        label: "Product, row",
        content: {
          formula:
            '=IF({n}>ROWS(ProductMaterials[Product]),"",IFERROR(MATCH(INDEX(ProductMaterials[Product],{n}),Products[Product],0),""))',
        },
      },
      {
        name: "part",
        label: "Code",
        content: {
          formula:
            '=IF({row.product_no}="","",INDEX(ProductMaterials[Part],{n}))',
        },
      },
      ...[
        "bought",
        "carton",
        "needed",
        "drawn",
        "least",
        "order_cost",
        "freight",
        "needs",
      ].map((name) => columnOf(materials, name, writtenOut)),
      {
        name: "container_cost",
        label: "Of it containers",
        format: "#,##0.00",
        content: {
          formula:
            '=IF(ISNUMBER({row.order_cost}),IF(IFERROR(INDEX(Parts[Kind],MATCH({row.part},Parts[Part],0)),"")="container",{row.order_cost},0),"")',
        },
      },
    ],
  };
};
