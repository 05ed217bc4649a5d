import { blendingTerms as terms } from "../terms/blending";
import {
  blendPartner,
  blendShares,
  type Pair,
} from "../trade/blending/partner";
import { inPounds } from "./by-weight";
import { pounds } from "./blending-rows";
import { defineFunction, type Values } from "./define";
import { nativeBlendPartner } from "./native/blending";
import { entered, figure, percent } from "./wording";

const pairArgs = {
  brix_a: terms.brixA,
  brix_b: terms.brixB,
  target: terms.target,
} as const;

const pairOf = (values: Values<typeof pairArgs>): Pair => ({
  brixA: values.brix_a,
  brixB: values.brix_b,
  target: values.target,
});

export const blendingPairFunctions = [
  defineFunction({
    name: "BLEND_PARTNER",
    family: "Blending",
    summary: "Pounds of a second lot that bring a first one to a target Brix.",
    question: "How much of the other lot brings this one to the right Brix?",
    args: { weight_a: terms.weightA, ...pairArgs },
    gives: { about: "weight of lot B to add", unit: "lb" },
    basis: ["arithmetic"],
    notes: [
      "All of lot A goes in. A lot B of 0 °Bx is water: the answer is that of `WATER_FOR_BRIX`.",
      "For gallons, give the pounds together and the target to `VOLUME_OF`.",
    ],
    examples: [
      {
        args: [1000, 66, 67, 66.4],
        gives: 666.6666667,
        within: 1e-6,
        source: "hand arithmetic: 1,000 × (66.4 − 66) ÷ (67 − 66.4)",
      },
      {
        args: [1000, 67.5, 0, 66.5],
        gives: 15.037594,
        within: 1e-6,
        source:
          "water: 1,000 × (67.5 ÷ 66.5 − 1), the sum behind WATER_FOR_BRIX, by hand",
      },
    ],
    native: nativeBlendPartner,
    compute: ({ weight_a, ...pair }) =>
      inPounds(blendPartner(weight_a, pairOf(pair))),
    why: ({ weight_a, brix_a, brix_b, target }, answer) =>
      `${pounds(weight_a)} × (${entered(target)} − ${entered(brix_a)}) ÷ (${entered(brix_b)} − ${entered(target)}) = ${figure(answer, 6)} lb of B; together ${figure(inPounds(weight_a) + Number(answer), 6)} lb at ${entered(target)} °Bx`,
  }),
  defineFunction({
    name: "BLEND_SHARES",
    family: "Blending",
    summary: "Shares of two lots in a mix at a target Brix.",
    question: "In what proportion do I mix these two lots?",
    args: pairArgs,
    gives: {
      about: "share of lot A, then of lot B, by weight",
      unit: "share",
      spills: ["Share of A", "Share of B"],
    },
    basis: ["arithmetic"],
    notes: [
      "In plain formulas the share of A is `(brix_b-target)/(brix_b-brix_a)`, and the share of B is what is left of 1.",
    ],
    examples: [
      {
        args: [66, 67, 66.4],
        gives: [[0.6, 0.4]],
        within: 1e-9,
        source: "hand arithmetic: (67 − 66.4) ÷ (67 − 66)",
      },
      {
        args: [65.9, 67.1, 66.5],
        gives: [[0.5, 0.5]],
        within: 1e-9,
        source: "hand arithmetic: the target is half way",
      },
    ],
    noNative:
      "the answer fills two cells, which one plain formula from before 2019 cannot do",
    compute: (values) => {
      const { a, b } = blendShares(pairOf(values));
      return [[a, b]];
    },
    why: (values) => {
      const { a, b } = blendShares(pairOf(values));
      const { brix_a, brix_b, target } = values;
      return `(${entered(brix_b)} − ${entered(target)}) ÷ (${entered(brix_b)} − ${entered(brix_a)}) = ${percent(a)} of A and ${percent(b)} of B, by weight`;
    },
  }),
];
