import { priceTerms as terms } from "../terms/price";
import { optional } from "../terms/term";
import { margin, markup, priceForMargin } from "../trade/pricing/margin";
import { roundPrice } from "../trade/pricing/round-price";
import { defineFunction } from "./define";
import { nativePriceForMargin, nativeRoundPrice } from "./native/price";
import { dollars, percent } from "./wording";

export const priceFunctions = [
  defineFunction({
    name: "PRICE_FOR_MARGIN",
    family: "Price",
    summary:
      "Price that leaves a margin after fees; margin is on the price, not on the cost.",
    question: "What must I charge to keep my margin?",
    args: {
      cost: terms.cost,
      margin: terms.margin,
      fee_share: optional(terms.feeShare, 0),
      fixed_fee: optional(terms.fixedFee, 0),
    },
    gives: { about: "price", unit: "money each" },
    basis: ["arithmetic"],
    examples: [
      {
        args: [5.2, 0.35],
        gives: 8,
        source: "worked example, arithmetic: 5.20 ÷ 0.65 = 8.00",
      },
      {
        args: [4.85, "52 %", "14.5 %", 0.225],
        gives: 5.075 / 0.335,
        source: "worked example, arithmetic: 5.075 ÷ 0.335 = 15.15",
      },
    ],
    native: nativePriceForMargin,
    compute: (values) =>
      priceForMargin({
        cost: values.cost,
        margin: values.margin,
        feeShare: values.fee_share,
        fixedFee: values.fixed_fee,
      }),
    why: ({ cost, margin: kept, fee_share, fixed_fee }, answer) =>
      `(${dollars(cost)} + ${dollars(fixed_fee)}) ÷ (1 − ${percent(kept)} margin − ${percent(fee_share)} fees) = ${dollars(answer)}`,
  }),
  defineFunction({
    name: "MARGIN",
    family: "Price",
    summary: "Profit as a share of the price.",
    question: "What share of the price do I keep?",
    args: { price: terms.price, cost: terms.cost },
    gives: { about: "margin, on the price", unit: "share" },
    basis: ["arithmetic"],
    notes: ["Margin is on the price; MARKUP is on the cost."],
    examples: [
      {
        args: [8, 5.2],
        gives: 0.35,
        source: "worked example, arithmetic: (8.00 − 5.20) ÷ 8.00",
      },
      {
        args: [7.02, 5.2],
        gives: 0.2593,
        within: 0.00005,
        source: "worked example, arithmetic: a markup of 35 % leaves 25.9 %",
      },
    ],
    native: ({ price, cost }) => `((${price}-${cost})/${price})`,
    compute: ({ price, cost }) => margin(price, cost),
    why: ({ price, cost }, answer) =>
      `(${dollars(price)} − ${dollars(cost)}) ÷ price ${dollars(price)} = ${percent(Number(answer))} of the price`,
  }),
  defineFunction({
    name: "MARKUP",
    family: "Price",
    summary: "Profit as a share of the cost.",
    question: "What do I put on top of the cost?",
    args: { price: terms.price, cost: terms.costAboveZero },
    gives: { about: "markup, on the cost", unit: "share" },
    basis: ["arithmetic"],
    notes: ["Markup is on the cost; MARGIN is on the price."],
    examples: [
      {
        args: [8, 5.2],
        gives: 0.5385,
        within: 0.00005,
        source: "worked example, arithmetic: (8.00 − 5.20) ÷ 5.20 = 53.8 %",
      },
      {
        args: [7.02, 5.2],
        gives: 0.35,
        source: "worked example, arithmetic: 5.20 × 1.35 = 7.02",
      },
    ],
    native: ({ price, cost }) => `((${price}-${cost})/${cost})`,
    compute: ({ price, cost }) => markup(price, cost),
    why: ({ price, cost }, answer) =>
      `(${dollars(price)} − ${dollars(cost)}) ÷ cost ${dollars(cost)} = ${percent(Number(answer))} on the cost`,
  }),
  defineFunction({
    name: "ROUND_PRICE",
    family: "Price",
    summary: "Next price with a given ending, such as 0.99.",
    question: "What is the next price that ends in 99 cents?",
    args: {
      price: terms.priceToRound,
      ending: optional(terms.ending, 0.99),
      direction: optional(terms.direction, "up"),
    },
    gives: { about: "price", unit: "money each" },
    basis: ["arithmetic"],
    notes: [
      "A price that has the ending stays. Half way between two, nearest goes up.",
    ],
    examples: [
      { args: [15.15], gives: 15.99, source: "read off: 15.99 follows 15.15" },
      {
        args: [15.99, 0.99],
        gives: 15.99,
        source: "read off: the ending is there already",
      },
      {
        args: [8, "0.49", "down"],
        gives: 7.49,
        source: "read off: 7.49 comes before 8.00",
      },
    ],
    native: nativeRoundPrice,
    compute: ({ price, ending, direction }) =>
      roundPrice(price, ending, direction),
    why: ({ price, ending, direction }, answer) =>
      `${dollars(price)} to a price ending in ${ending}, ${direction}: ${dollars(answer)}`,
  }),
];
