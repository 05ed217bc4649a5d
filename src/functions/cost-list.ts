import { unusable } from "../measures/cannot-answer";
import { isoDate } from "../measures/read-date";
import { materialTerms as terms } from "../terms/materials";
import type { ValueOf } from "../terms/term";
import { type CostPart, costTotal } from "../trade/costing/cost-total";
import { type ListedPrice, priceOn } from "../trade/costing/price-list";
import { defineFunction } from "./define";
import { nativeCostTotal, nativePriceOn } from "./native/cost";
import { dollars } from "./wording";

const listOf = (rows: ValueOf<typeof terms.prices>): readonly ListedPrice[] =>
  rows.map(({ item, valid_from, price }) => ({
    item,
    from: valid_from,
    price,
  }));

function partsOf(
  names: ValueOf<typeof terms.partNames>,
  amounts: ValueOf<typeof terms.partAmounts>,
): readonly CostPart[] {
  if (names.length !== amounts.length)
    throw unusable(
      `names and amounts: ${names.length} names do not stand beside ${amounts.length} amounts; give both without headings, row by row`,
    );
  return names.map((name, i) => ({ name, amount: amounts[i] }));
}

const priceList = [
  ["BTL-250", "2026-05-01", 1.42],
  ["CAP-28", "2026-01-01", 0.115],
  ["BTL-250", "2025-05-01", 1.36],
] as const;

export const costListFunctions = [
  defineFunction({
    name: "PRICE_ON",
    family: "Cost",
    summary: "Listed price of an item on a day: the latest that holds by then.",
    question: "Which price of this part held on that day?",
    args: { item: terms.item, date: terms.priceDay, prices: terms.prices },
    gives: { about: "price", unit: "money each" },
    basis: ["arithmetic"],
    notes: [
      "The rows may stand in any order. Capitals make no difference in the item.",
    ],
    examples: [
      {
        args: ["BTL-250", "2026-04-30", priceList],
        gives: 1.36,
        source: "read off the list: the price of 1 May does not hold yet",
      },
      {
        args: ["BTL-250", "2026-05-01", priceList],
        gives: 1.42,
        source: "read off the list: a price holds from its first day",
      },
    ],
    native: nativePriceOn,
    compute: ({ item, date, prices }) =>
      priceOn(item, date, listOf(prices)).price,
    why: ({ item, date, prices }, answer) => {
      const { from } = priceOn(item, date, listOf(prices));
      return `${item} on ${isoDate(date)}: ${dollars(answer)}, which holds from ${isoDate(from)}`;
    },
  }),
  defineFunction({
    name: "COST_TOTAL",
    family: "Cost",
    summary:
      "Sum of the parts of a cost; a part without an amount withholds it.",
    question: "What do all parts together cost, if none is missing?",
    args: { names: terms.partNames, amounts: terms.partAmounts },
    gives: { about: "sum of the parts", unit: "money" },
    basis: ["arithmetic"],
    notes: [
      "A blank amount is never zero; type 0 for a part that costs nothing.",
    ],
    examples: [
      {
        args: [
          [["syrup"], ["glass"], ["caps"]],
          [[1.91], [1.45], [0.12]],
        ],
        gives: 3.48,
        source: "hand arithmetic",
      },
      {
        args: [
          [["syrup"], ["caps"]],
          [[1.91], [0]],
        ],
        gives: 1.91,
        source: "hand arithmetic; a zero that is typed counts",
      },
    ],
    native: nativeCostTotal,
    compute: ({ names, amounts }) => costTotal(partsOf(names, amounts)),
    why: ({ names, amounts }, answer) =>
      `${partsOf(names, amounts)
        .filter(({ amount }) => amount !== undefined)
        .map(({ name, amount }) => `${name} ${dollars(amount ?? 0)}`)
        .join(" + ")} = ${dollars(answer)}`,
  }),
];
