import { costTerms as terms } from "../terms/cost";
import { optional } from "../terms/term";
import { type Lot, lotCost, lotDraws } from "../trade/costing/lot-cost";
import { inPounds, perKilogram, perPound } from "./by-weight";
import { defineFunction, type Values } from "./define";
import { nativeLotCost } from "./native/cost";
import { dollars, figure } from "./wording";

const args = {
  method: terms.lotMethod,
  weight: terms.lotWeight,
  lots: terms.lots,
  as_of: optional(terms.asOf, undefined),
} as const;

const lotsOf = (values: Values<typeof args>): readonly Lot[] =>
  values.lots.map((lot) => ({ ...lot, price: perKilogram(lot.price) }));

/** Draws written out one by one; beyond these the sentence would be longer than the sheet is wide. */
const WRITTEN_OUT = 4;

const demoLots = [
  ["2026-03-20", 1000, 2.4],
  ["2026-04-08", 2000, 2.6],
  ["2026-02-11", 0, 2.1],
  ["2025-04-02", 500, 2.2],
] as const;

export const costLotFunctions = [
  defineFunction({
    name: "LOT_COST",
    family: "Cost",
    summary:
      "Money for a weight of syrup: oldest lots first, at average, or at replacement.",
    question:
      "What do these pounds cost me: as I paid, on average, or at today's price?",
    args,
    gives: { about: "cost of the weight", unit: "money" },
    basis: ["arithmetic"],
    notes: [
      "Oldest first takes whole lots in the order they came in; lots of one day in the order of their rows. Lots with 0 lb left are passed over.",
      "Average is over the pounds in stock.",
      "Replacement is the newest price on or before the day, used up or not; it may price more than is in stock.",
      "Lots received after the day asked about are left out of all three.",
      "In a copy of plain formulas, oldest first is right only where no two lots still in stock came in on one day, and the lots must have no heading row.",
    ],
    examples: [
      {
        args: ["oldest first", 1800, demoLots],
        gives: 4280,
        source:
          "hand arithmetic: 500 × 2.20 + 1,000 × 2.40 + 300 × 2.60 = 1,100 + 2,400 + 780",
      },
      {
        args: ["average", 1800, demoLots],
        gives: 4474.285714,
        within: 0.000001,
        source:
          "hand arithmetic: (1,100 + 2,400 + 5,200) ÷ 3,500 lb = 2.485714; × 1,800",
      },
      {
        args: ["replacement", 5000, demoLots, "2026-04-01"],
        gives: 12000,
        source: "hand arithmetic: 5,000 × 2.40, the newest price by 1 April",
      },
    ],
    native: nativeLotCost,
    nativeRefuses:
      "The plain form gives #N/A for oldest first when two lots came in on one day: give each its own day, or put them in one row.",
    compute: (values) =>
      lotCost(values.method, values.weight, lotsOf(values), values.as_of),
    why: (values, answer) => {
      const draws = lotDraws(
        values.method,
        values.weight,
        lotsOf(values),
        values.as_of,
      );
      const written = draws
        .slice(0, WRITTEN_OUT)
        .map(
          ({ weight, price }) =>
            `${figure(inPounds(weight), 8)} lb × ${dollars(perPound(price))}`,
        );
      const more = draws.length - written.length;
      const sum = [...written, ...(more > 0 ? [`${more} more lots`] : [])];
      return `${values.method}: ${sum.join(" + ") || "nothing is drawn"} = ${dollars(answer)}`;
    },
  }),
];
