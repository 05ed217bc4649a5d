import { unusable } from "../measures/cannot-answer";
import { contentsTerms as terms } from "../terms/contents";
import { costTerms } from "../terms/cost";
import { lineTerms } from "../terms/lines";
import { syrupTerms } from "../terms/syrup";
import { optional, type ValueOf } from "../terms/term";
import { fillTarget } from "../trade/contents/fill-target";
import { type HeadBottle, headSpread } from "../trade/contents/head-spread";
import { overfillCost, overfillWeight } from "../trade/contents/overfill";
import { mean } from "../trade/contents/sample";
import { inPounds, perKilogram } from "./by-weight";
import { arithmeticOnly, enteredMillilitres } from "./contents-words";
import { defineFunction } from "./define";
import { nativeFillTarget, nativeOverfillCost } from "./native/contents";
import { dollars, figure, percent } from "./wording";

const millilitres = (litres: number): string =>
  `${figure(litres * 1000, 6)} mL`;

/** With a minus sign, not a hyphen. */
const signed = (value: number, shown: (size: number) => string): string =>
  `${value < 0 ? "−" : ""}${shown(Math.abs(value))}`;

/** A volume without its head, or a head without its volume, is a row half filled. */
function bottlesOf(
  volumes: ValueOf<typeof terms.volumesWithBlanks>,
  heads: ValueOf<typeof terms.heads>,
): readonly HeadBottle[] {
  if (volumes.length !== heads.length)
    throw unusable(
      `volumes and heads: ${volumes.length} volumes do not stand beside ${heads.length} heads; give both with headings or both without, row by row`,
    );
  return volumes.flatMap((volume, i) => {
    const head = heads[i];
    if (volume === undefined && head === undefined) return [];
    if (volume === undefined)
      throw unusable(
        `volumes, item ${i + 1}: needs the volume beside head ${head}`,
      );
    if (head === undefined)
      throw unusable(
        `heads, item ${i + 1}: needs the head that filled ${millilitres(volume)}`,
      );
    return [{ volume, head }];
  });
}

export const contentsFillFunctions = [
  defineFunction({
    name: "OVERFILL_COST",
    family: "Net contents",
    summary:
      "Money in the syrup a run gives away above the declared volume; negative when short.",
    question: "What does filling over the label cost me?",
    args: {
      volumes: terms.volumes,
      declared: terms.declared,
      bottles: lineTerms.bottles,
      brix: syrupTerms.brix,
      price: costTerms.pricePerPound,
    },
    gives: { about: "money given away", unit: "money" },
    basis: ["icumsaDensity", "airBuoyancy", "usCustomary"],
    uncertainty:
      "±0.02 % from the density; a mean that is 0.1 mL out counts 0.1 mL for every bottle of the run.",
    notes: [
      "Volumes are at 68 °F: one bottle's average, or every bottle weighed.",
      "Put your own goal where the declared volume stands to see what could be avoided.",
      "A negative amount is not a saving: the bottles are short.",
    ],
    examples: [
      {
        args: [253.2, 250, 12_000, 66.9, 2.6],
        gives: 292.12,
        within: 0.05,
        source:
          "hand arithmetic: 3.2 × 12,000 ÷ 3,785.41 = 10.1442 gal × 11.0759 lb/gal × 2.60",
      },
      {
        args: [[[249.1], [250.3], [249]], "250 mL", 1200, 66, 2.6],
        gives: -4.85,
        within: 0.01,
        source:
          "hand arithmetic: mean 249.4667, −0.53333 × 1,200 ÷ 3,785.41 = −0.16907 gal × 11.0297 × 2.60",
      },
    ],
    native: nativeOverfillCost,
    compute: ({ price, ...filled }) => overfillCost(filled, perKilogram(price)),
    why: ({ price, ...filled }, answer) => {
      const { volumes, declared, bottles } = filled;
      const pounds = inPounds(overfillWeight(filled));
      const isShort = pounds < 0;
      return `mean ${millilitres(mean(volumes))} − ${enteredMillilitres(declared)} = ${signed(mean(volumes) - declared, millilitres)} × ${figure(bottles, 9)} bottles = ${signed(pounds, (lb) => figure(lb, 6))} lb × ${dollars(price)} = ${dollars(answer)}${isShort ? ": short, not a saving" : ""}`;
    },
  }),
  defineFunction({
    name: "FILL_TARGET",
    family: "Net contents",
    summary:
      "The least average to fill so that neither the mean nor single bottles are short.",
    question: "What average should I set this machine to?",
    args: {
      declared: terms.declared,
      spread: terms.spread,
      allowed_short: terms.allowedShort,
      risk: optional(terms.risk, 0.005),
      house_margin: optional(terms.houseMargin, 0),
    },
    gives: { about: "average to aim at, at 68 °F", unit: "mL" },
    basis: ["chance", "hb133Rules"],
    uncertainty:
      "No better than the spread: behind 12 bottles the true spread lies between 0.71 and 1.70 times the one found, 19 times in 20 (worked out for a normal distribution).",
    caution: arithmeticOnly,
    notes: [
      "The larger of: declared volume and house margin; declared volume less the allowed shortfall and as many spreads as the risk asks for.",
      "Bottles are taken to vary as a normal distribution does; a head that fills apart from the others breaks that, see HEAD_SPREAD.",
      "The target is cold; HOT_VOLUME says what to fill hot.",
    ],
    examples: [
      {
        args: [250, 1.37, 9],
        gives: 250,
        source:
          "hand arithmetic: 250 − 9 + 2.5758 × 1.37 = 244.53, below the declared volume",
      },
      {
        args: ["250 mL", 4.2, 9, "0.5 %", 1],
        gives: 251.8185,
        within: 0.0005,
        source: "hand arithmetic: 241 + 2.575829 × 4.2 against 250 + 1",
      },
    ],
    native: nativeFillTarget,
    compute: ({ allowed_short, house_margin, ...filling }) =>
      fillTarget({
        ...filling,
        allowedShort: allowed_short,
        margin: house_margin,
      }).target * 1000,
    why: ({ declared, spread, allowed_short, risk, house_margin }, answer) => {
      const { forAverage, forSingle, spreads } = fillTarget({
        declared,
        spread,
        risk,
        allowedShort: allowed_short,
        margin: house_margin,
      });
      const label = enteredMillilitres(declared);
      return `for the average ${label} + ${enteredMillilitres(house_margin)} = ${millilitres(forAverage)}; for single bottles ${label} − ${enteredMillilitres(allowed_short)} + ${figure(spreads)} × ${enteredMillilitres(spread)} = ${millilitres(forSingle)} at a risk of ${percent(risk)}; the larger is ${figure(answer, 6)} mL`;
    },
  }),
  defineFunction({
    name: "HEAD_SPREAD",
    family: "Net contents",
    summary: "How each filling head fills against the mean of all bottles.",
    question: "Which filling head fills high or low?",
    args: { volumes: terms.volumesWithBlanks, heads: terms.heads },
    gives: {
      about: "one row a head",
      unit: "mL",
      spills: ["Head", "Mean", "Difference"],
    },
    basis: ["arithmetic"],
    notes: [
      "The mean is over all bottles, so a head with more bottles weighs more.",
      "A few bottles a head show a head that is far out, not one that is a little out.",
    ],
    examples: [
      {
        args: [
          [[252], [250], [248], [253], [250], [247]],
          [[1], [2], [3], [1], [2], [3]],
        ],
        gives: [
          [1, 252.5, 2.5],
          [2, 250, 0],
          [3, 247.5, -2.5],
        ],
        within: 0.000001,
        source: "hand arithmetic: the mean of all six is 250",
      },
      {
        args: [
          [[251], [null], [249.4], [250.6]],
          [[4], [null], [2], [4]],
        ],
        gives: [
          [2, 249.4, -0.933333],
          [4, 250.8, 0.466667],
        ],
        within: 0.000001,
        source:
          "hand arithmetic: 751 ÷ 3 = 250.3333; the blank row is no bottle",
      },
    ],
    noNative:
      "the answer fills as many rows as there are heads, which one plain formula from before 2019 cannot do",
    compute: ({ volumes, heads }) =>
      headSpread(bottlesOf(volumes, heads)).map((fill) => [
        fill.head,
        fill.mean * 1000,
        fill.difference * 1000,
      ]),
    why: ({ volumes, heads }) => {
      const bottles = bottlesOf(volumes, heads);
      const fills = headSpread(bottles);
      const all = mean(bottles.map(({ volume }) => volume));
      const [least, most] = [
        fills.reduce((a, b) => (b.mean < a.mean ? b : a)),
        fills.reduce((a, b) => (b.mean > a.mean ? b : a)),
      ];
      return `${bottles.length} bottles, mean ${millilitres(all)}; head ${most.head} fills most, ${millilitres(most.mean)}, head ${least.head} least, ${millilitres(least.mean)}: ${millilitres(most.mean - least.mean)} apart`;
    },
  }),
];
