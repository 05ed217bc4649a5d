import { materialTerms as terms } from "../terms/materials";
import { lineTerms } from "../terms/lines";
import { optional, type ValueOf } from "../terms/term";
import { bestBuy, type Break, breakPrice } from "../trade/costing/breaks";
import { piecesToDraw, toDraw } from "../trade/costing/draw";
import { defineFunction } from "./define";
import { nativeBreakPrice, nativePieces } from "./native/cost";
import { dollars, figure, percent } from "./wording";

const bottleBreaks = [
  [504, 1.42],
  [2016, 1.21],
  [8064, 1.04],
] as const;
const labelBreaks = [
  [1000, 0.29],
  [250, 0.58],
  [500, 0.41],
  [2500, 0.2],
] as const;

const breaksOf = (rows: ValueOf<typeof terms.breaks>): readonly Break[] =>
  rows.map(({ from_quantity, price }) => ({ from: from_quantity, price }));

export const costMaterialFunctions = [
  defineFunction({
    name: "PIECES_TO_DRAW",
    family: "Cost",
    summary:
      "Pieces of a part to draw for a run, with spoilage, in whole cartons.",
    question: "How many bottles, caps or labels must I draw or order?",
    args: {
      bottles: lineTerms.bottles,
      per_bottle: optional(terms.perBottle, 1),
      spoilage: optional(terms.spoilage, 0),
      carton: optional(terms.carton, 1),
    },
    gives: { about: "pieces to draw", unit: "pieces" },
    basis: ["arithmetic", "commonPractice"],
    notes: ["Spoilage is a share of what is drawn, not of what is needed."],
    examples: [
      {
        args: [1200, 1, 0.015, 12],
        gives: 1224,
        source:
          "worked example, arithmetic: 1,200 ÷ 0.985 = 1,218.3, up to 102 cartons of 12",
      },
      {
        args: [600, 1, "3 %", 250],
        gives: 750,
        source: "hand arithmetic: 600 ÷ 0.97 = 618.6, up to 3 rolls of 250",
      },
    ],
    native: nativePieces,
    compute: ({ bottles, per_bottle, spoilage, carton }) =>
      piecesToDraw({ bottles, perBottle: per_bottle, spoilage, carton }),
    why: ({ bottles, per_bottle, spoilage, carton }, answer) =>
      `${figure(bottles)} bottles × ${figure(per_bottle)} ÷ (1 − ${percent(spoilage)}) = ${figure(toDraw(bottles * per_bottle, spoilage), 6)}; up to ${carton === 1 ? "whole pieces" : `cartons of ${figure(carton)}`} = ${figure(answer, 8)}${spoilage >= 0.5 ? "; half or more spoiled: check that share" : ""}`,
  }),
  defineFunction({
    name: "BREAK_PRICE",
    family: "Cost",
    summary: "Price each at a quantity, from a table of price breaks.",
    question: "What does one piece cost when I order this many?",
    args: { pieces: terms.pieces, breaks: terms.breaks },
    gives: { about: "price each", unit: "money each" },
    basis: ["arithmetic"],
    notes: ["The breaks may stand in any order."],
    examples: [
      {
        args: [1224, bottleBreaks],
        gives: 1.42,
        source: "read off the table: 504 is reached, 2,016 is not",
      },
      {
        args: [1250, labelBreaks],
        gives: 0.29,
        source: "read off the table, whose breaks are out of order",
      },
    ],
    native: nativeBreakPrice,
    compute: ({ pieces, breaks }) => breakPrice(pieces, breaksOf(breaks)),
    why: ({ pieces, breaks }, answer) => {
      const reached = breaksOf(breaks)
        .filter(({ from }) => from <= pieces)
        .reduce((a, b) => (b.from > a.from ? b : a));
      return `${figure(pieces, 8)} pieces reach the break at ${figure(reached.from, 8)}: ${dollars(answer)} each`;
    },
  }),
  defineFunction({
    name: "BEST_BUY",
    family: "Cost",
    summary:
      "Cheapest order that covers a need, buying up to a higher break where that pays.",
    question: "Is it cheaper to buy up to the next price break?",
    args: {
      need: terms.need,
      breaks: terms.breaks,
      carton: optional(terms.carton, 1),
    },
    gives: {
      about: "the order",
      unit: "",
      spills: ["Buy", "Price each", "Total", "Left over", "Saving"],
    },
    basis: ["arithmetic"],
    notes: [
      "The saving is against buying no more than needed. What is left over is worth something only if it will be used.",
    ],
    examples: [
      {
        args: [619, labelBreaks, 250],
        gives: [[1000, 0.29, 290, 381, 17.5]],
        within: 1e-9,
        source:
          "worked example, arithmetic: 750 × 0.41 = 307.50 against 1,000 × 0.29 = 290",
      },
      {
        args: [1224, bottleBreaks, 12],
        gives: [[1224, 1.42, 1738.08, 0, 0]],
        within: 1e-9,
        source: "hand arithmetic: 2,016 × 1.21 = 2,439.36 is dearer",
      },
    ],
    noNative:
      "the answer fills five cells and every break is tried in turn, which one plain formula from before 2019 cannot do",
    compute: ({ need, breaks, carton }) => {
      const { buy, price, total, leftOver, saving } = bestBuy(
        need,
        breaksOf(breaks),
        carton,
      );
      return [[buy, price, total, leftOver, saving]];
    },
    why: ({ need, breaks, carton }) => {
      const best = bestBuy(need, breaksOf(breaks), carton);
      const words = `${figure(best.buy, 8)} × ${dollars(best.price)} = ${dollars(best.total)} for a need of ${figure(need, 8)}, ${figure(best.leftOver, 8)} left over`;
      return best.saving > 0
        ? `${words}; buying up saves ${dollars(best.saving)}`
        : `${words}; buying up to a higher break saves nothing`;
    },
  }),
];
