import type { Column } from "../model";
import type { Names } from "./rebind";

/** Names of a costing sheet's cells that stand in a product's own row of the working sheet. */
export const ownRow: Names = Object.fromEntries(
  [
    "bottles",
    "cases",
    "pallets",
    "fill",
    "kind",
    "product",
    "brix",
    "lb_per_bottle",
    "need",
    "purge",
    "rate",
    "hours",
    "chosen_no",
  ].map((name) => [name, `{row.${name}}`]),
);

/** A column of the products; spare rows, for products still to come, stay empty. */
export const productColumn = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: { formula: `=IF({row.product}="","",${formula})` },
});
