import { contentsTerms as terms } from "../terms/contents";
import { optional } from "../terms/term";
import { allowedShort } from "../trade/contents/allowed-short";
import {
  type ContentsRule,
  printedFactors,
  sampleFactor,
  sampleSize,
} from "../trade/contents/sampling";
import { arithmeticOnly, enteredMillilitres } from "./contents-words";
import { defineFunction } from "./define";
import {
  nativeAllowedShort,
  nativeSampleFactor,
  nativeSampleSize,
} from "./native/contents";
import { figure } from "./wording";

const planBasis = ["hb133Plan", "euPrepackages", "oimlR87"] as const;
const ruleNames = {
  US: "NIST Handbook 133 category A",
  EU: "Directive 76/211/EEC",
  OIML: "OIML R 87",
} as const;

const printedFor = (rule: ContentsRule): string =>
  printedFactors(rule)
    .filter(({ factor }) => factor !== undefined)
    .map(({ sample, factor }) => `${sample} (${factor})`)
    .join(", ");

export const contentsSamplingFunctions = [
  defineFunction({
    name: "SAMPLE_SIZE",
    family: "Net contents",
    summary: "How many bottles of a lot an inspector weighs.",
    question: "How many bottles of this lot must be weighed?",
    args: { lot_size: terms.lotSize, rule: optional(terms.rule, "US") },
    gives: { about: "bottles to weigh", unit: "bottles" },
    basis: [...planBasis, "ukSmallLots"],
    notes: [
      "Draw the bottles at random from the whole lot: one product, label and size, packed together.",
      "US: category A; below 12 bottles, every one of them. The table is from memory.",
      "EU: the first of two samples without opening the bottles; below 100, every one of them. A lot is at most 10,000 bottles, or what one hour makes when it is checked at the end of the line.",
      "OIML: from memory; lots below 100 are not answered.",
    ],
    examples: [
      {
        args: [1200],
        gives: 24,
        source: "Handbook 133 Table 2-1, from memory: 251 to 3,200",
      },
      {
        args: [12_000, "US"],
        gives: 48,
        source: "Handbook 133 Table 2-1, from memory: above 3,200",
      },
      {
        args: [1200, "EU"],
        gives: 50,
        source: "Directive 76/211/EEC Annex II 2.2.1: 501 to 3,200",
      },
    ],
    native: nativeSampleSize,
    compute: ({ lot_size, rule }) => sampleSize(lot_size, rule),
    why: ({ lot_size, rule }, answer) =>
      answer === lot_size
        ? `${ruleNames[rule]}: of a lot of ${figure(lot_size, 9)}, all ${figure(answer, 9)} are weighed`
        : `${ruleNames[rule]}: of a lot of ${figure(lot_size, 9)}, ${figure(answer, 9)} are weighed`,
  }),
  defineFunction({
    name: "SAMPLE_FACTOR",
    family: "Net contents",
    summary:
      "Factor on the spread of a sample: how far its average may be short by chance.",
    question: "By how much may the average of my sample be short?",
    args: { n: terms.sample, rule: optional(terms.rule, "US") },
    gives: { about: "factor on the spread", unit: "" },
    basis: [...planBasis, "chance"],
    notes: [
      "The factor times the spread (standard deviation) of the sample is the most its average may be below the declared volume.",
      `US prints, from memory: ${printedFor("US")}. For 48 it prints 0.291, where a calculation gives 0.290; the last digit at 2, 5 and 6 is the calculated one.`,
      `EU prints ${printedFor("EU")}. OIML prints, from memory: ${printedFor("OIML")}.`,
      "Every other factor is worked out as Student's t over √n: t at 97.5 % for the US, at 99.5 % for EU and OIML, with n − 1 degrees of freedom.",
    ],
    examples: [
      {
        args: [12],
        gives: 0.635,
        source:
          "Handbook 133 Table 2-1, from memory; 2.201 ÷ √12 = 0.6354 by hand",
      },
      {
        args: [48, "US"],
        gives: 0.291,
        source: "Handbook 133 Table 2-1, from memory",
      },
      {
        args: [30, "EU"],
        gives: 0.503,
        source: "Directive 76/211/EEC Annex II 2.3",
      },
      {
        args: [16],
        gives: 0.53286,
        within: 0.00002,
        source:
          "Student's t at 97.5 % and 15 degrees of freedom, 2.13145 in any table, ÷ 4",
      },
    ],
    native: nativeSampleFactor,
    compute: ({ n, rule }) => sampleFactor(n, rule).factor,
    why: ({ n, rule }, answer) => {
      const { factor, printed } = sampleFactor(n, rule);
      return printed
        ? `${ruleNames[rule]} prints ${figure(answer)} for ${n} bottles`
        : `${ruleNames[rule]} prints no factor for ${n} bottles; worked out: t at ${rule === "US" ? "97.5" : "99.5"} % with ${n - 1} degrees of freedom, ${figure(factor * Math.sqrt(n))} ÷ √${n} = ${figure(answer)}`;
    },
  }),
  defineFunction({
    name: "ALLOWED_SHORT",
    family: "Net contents",
    summary: "How far one bottle may be short of its declared volume.",
    question: "How far may a single bottle be short?",
    args: { declared: terms.declared, rule: terms.shortfallRule },
    gives: { about: "allowed shortfall of one bottle", unit: "mL" },
    basis: [
      "euPrepackages",
      "euLargerPacks",
      "oimlR87",
      "canadaShortfall",
      "hb133Rules",
    ],
    caution: arithmeticOnly,
    notes: [
      "EU: 5 mL to 10 L. Percentages are rounded up to the next 0.1 mL; that rounding, and the 1.5 % above 1 L, are from memory.",
      "OIML: 5 mL to 50 L, from memory; rounded up to 0.1 mL to 1 L, and to whole millilitres above.",
      "Canada: to 50 L, as the table has it; no rounding was read.",
      "US: the maximum allowable variation (MAV) of Handbook 133 by liquid volume was not read, so it is not given here. Read it in Table 2-6 of the edition your state uses, keep it with the edition beside each size you sell, and type it in where an allowed shortfall is asked for. The table by weight does not stand in for it.",
    ],
    examples: [
      {
        args: [250, "EU"],
        gives: 9,
        source: "Directive 76/211/EEC Annex I 2.4: 9 mL from 200 to 300 mL",
      },
      {
        args: [375, "EU"],
        gives: 11.3,
        source:
          "Directive 76/211/EEC Annex I 2.4: 3 % from 300 to 500 mL, 11.25 by hand; rounded up as remembered",
      },
      {
        args: ["1,892 mL", "OIML"],
        gives: 29,
        source: "R 87 from memory: 1.5 %, 28.38 by hand, up to a whole mL",
      },
      {
        args: ["16 fl oz", "Canada"],
        gives: 14.1953,
        within: 0.0001,
        source: "3 % of 473.176 mL by hand, C.R.C., c. 1605, Sch. II Part III",
      },
    ],
    native: nativeAllowedShort,
    compute: ({ declared, rule }) =>
      allowedShort(declared, rule).allowed * 1000,
    why: ({ declared, rule }, answer) => {
      const { percent, unrounded } = allowedShort(declared, rule);
      const size = enteredMillilitres(declared);
      if (percent === undefined)
        return `${rule}: a bottle of ${size} may be short by ${figure(answer)} mL`;
      const worked = `${rule}: ${percent} % of ${size} = ${enteredMillilitres(unrounded)}`;
      return Math.abs(unrounded * 1000 - Number(answer)) < 1e-9
        ? worked
        : `${worked}, rounded up to ${figure(answer, 7)} mL`;
    },
  }),
];
