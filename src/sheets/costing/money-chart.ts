import type { ChartDescription } from "../model";

/** The parts of the cost at today's bulk price, drawn. */
export const moneyChart: ChartDescription = {
  kind: "bars",
  title: "Where the money in a bottle goes",
  says: "The parts of the full cost of a bottle at today's bulk price, as listed under What the bottle costs.",
  categories: "{cost.syrup.label..cost.overhead.label}",
  series: [
    {
      name: "a bottle",
      values: "{cost.syrup.replacement..cost.overhead.replacement}",
      color: "#8a5a2b",
    },
  ],
  format: "0.00",
  beside: "cost",
  rows: 12,
  columns: 6,
};
