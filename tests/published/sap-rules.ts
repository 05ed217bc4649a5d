import type { Printed } from "../support/published";

const readAt =
  "https://www.farmingmagazine.com/maple/determining-maple-sap-volumes/";
const quantity = "gallons of sap of 1 % that make one gallon of syrup";

/** C. H. Jones's rule of 86, for the syrup of its day. */
export const ruleOf86: Printed = {
  source: "C. H. Jones, rule of 86, as quoted",
  readAt,
  quantity,
  unit: "gal",
  columns: ["°Bx"],
  decimals: 0,
  rows: [[65.5, 86]],
};

export const revisedRule: Printed = {
  source: "Perkins & Isselhardt, revision of the rule of 86, as quoted",
  readAt,
  quantity,
  unit: "gal",
  columns: ["°Bx"],
  decimals: 1,
  rows: [[66.9, 88.2]],
};
