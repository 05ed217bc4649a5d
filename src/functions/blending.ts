import { withoutNoise } from "../measures/exact";
import { blendingTerms as terms } from "../terms/blending";
import { blendBrix, blendColor, blendPrice } from "../trade/blending/blend";
import { partsOf, sumInWords, totalOf } from "./blending-rows";
import { perKilogram, perPound } from "./by-weight";
import { defineFunction, type Values } from "./define";
import { nativeBlendColor, nativeMeanByWeight } from "./native/blending";
import { testFirst } from "./blending-words";
import { dollars, entered, figure } from "./wording";

const brixArgs = { weights: terms.weights, brixes: terms.brixes } as const;
const priceArgs = { weights: terms.weights, prices: terms.prices } as const;
const colorArgs = {
  weights: terms.weights,
  transmittances: terms.transmittances,
} as const;

const brixParts = ({ weights, brixes }: Values<typeof brixArgs>) =>
  partsOf(weights, {
    name: "brixes",
    one: "Brix",
    figures: brixes,
    written: (brix) => `${entered(brix)} °Bx`,
  });

const priceParts = ({ weights, prices }: Values<typeof priceArgs>) =>
  partsOf(weights, {
    name: "prices",
    one: "price",
    figures: prices,
    written: (price) => `${dollars(price)} per lb`,
  });

const colorParts = ({ weights, transmittances }: Values<typeof colorArgs>) =>
  partsOf(weights, {
    name: "transmittances",
    one: "transmission",
    figures: transmittances,
    written: (light) => `${entered(light)} %`,
  });

const byWeight =
  "The mean is by weight. The mean of the figures alone, or by gallons or drums, is another number.";
const blankRows =
  "Rows that are blank in both ranges are passed over; a row with only one of the two figures is refused by its number, counted below a heading.";

export const blendingFunctions = [
  defineFunction({
    name: "BLEND_BRIX",
    family: "Blending",
    summary: "Brix of a blend of lots, by their weights.",
    question: "What Brix do these lots have once they are mixed?",
    args: brixArgs,
    gives: { about: "Brix of the blend", unit: "°Bx" },
    basis: ["arithmetic"],
    notes: [byWeight, blankRows],
    examples: [
      {
        args: [
          [[1200], [800]],
          [[65.9], [67.1]],
        ],
        gives: 66.38,
        source:
          "hand arithmetic: (1,200 × 65.9 + 800 × 67.1) ÷ 2,000 = 132,760 ÷ 2,000",
      },
      {
        args: [
          [[500], [300], [200]],
          [[66], [67], [66.5]],
        ],
        gives: 66.4,
        source: "hand arithmetic: (33,000 + 20,100 + 13,300) ÷ 1,000",
      },
    ],
    native: ({ weights, brixes }) => nativeMeanByWeight(weights, brixes),
    compute: (values) => withoutNoise(blendBrix(brixParts(values))),
    why: (values, answer) => {
      const parts = brixParts(values);
      return `(${sumInWords(parts, entered)}) ÷ ${totalOf(parts)} = ${figure(answer, 6)} °Bx`;
    },
  }),
  defineFunction({
    name: "BLEND_PRICE",
    family: "Blending",
    summary: "Price per pound of a blend of lots, by their weights.",
    question: "What does a pound of this blend cost?",
    args: priceArgs,
    gives: { about: "price of the blend", unit: "money per lb" },
    basis: ["arithmetic"],
    notes: [byWeight, blankRows],
    examples: [
      {
        args: [
          [[1200], [800]],
          [[2.5], [2.24]],
        ],
        gives: 2.396,
        source: "hand arithmetic: (3,000 + 1,792) ÷ 2,000",
      },
      {
        args: [
          [[500], [300], [200]],
          [[2.6], [2.3], [2.1]],
        ],
        gives: 2.41,
        source: "hand arithmetic: (1,300 + 690 + 420) ÷ 1,000",
      },
    ],
    native: ({ weights, prices }) => nativeMeanByWeight(weights, prices),
    compute: (values) =>
      withoutNoise(
        perPound(
          blendPrice(
            priceParts(values).map((part) => ({
              ...part,
              figure: perKilogram(part.figure),
            })),
          ),
        ),
      ),
    why: (values, answer) => {
      const parts = priceParts(values);
      return `(${sumInWords(parts, dollars)}) ÷ ${totalOf(parts)} = ${dollars(answer)} per lb`;
    },
  }),
  defineFunction({
    name: "BLEND_COLOR",
    family: "Blending",
    summary:
      "Estimate of the light a blend lets through, from that of its lots.",
    question: "How light or dark will this blend be?",
    args: colorArgs,
    gives: { about: "transmission of the blend, an estimate", unit: "%" },
    basis: ["absorbancesAdd"],
    uncertainty:
      "An estimate: no measurement of blended maple syrup was found to hold it against.",
    caution: testFirst,
    notes: [
      "The mean is the geometric one, by weight: one dark drum darkens a blend far more than an ordinary mean shows.",
      'Transmission is in %, as it is measured: a number of 1 or less is refused, because a cell formatted as per cent holds 0.62 for 62 %; type 62 or "0.62 %".',
      blankRows,
      "In plain formulas the two ranges must have no heading.",
    ],
    examples: [
      {
        args: [
          [[1000], [1000]],
          [[72], [18]],
        ],
        gives: 36,
        source:
          "hand arithmetic: √(72 × 18) = √1,296; the ordinary mean would say 45",
      },
      {
        args: [
          [[300], [100]],
          [[80], [5]],
        ],
        gives: 40,
        source: "hand arithmetic: 80³ × 5 = 2,560,000 = 40⁴",
      },
    ],
    native: ({ weights, transmittances }) =>
      nativeBlendColor(weights, transmittances),
    compute: (values) => blendColor(colorParts(values)),
    why: (values, answer) => {
      const parts = colorParts(values);
      return `logarithms by weight, e to the (${sumInWords(parts, (light) => `ln ${entered(light)}`)}) ÷ ${totalOf(parts)} = ${figure(answer, 4)} %; an estimate: test before packing`;
    },
  }),
];
