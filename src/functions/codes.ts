import { codeTerms as terms } from "../terms/codes";
import { optional } from "../terms/term";
import { caseCode } from "../trade/codes/case-code";
import {
  checkDigit,
  onlyDigits,
  weightedSum,
  withCheckDigit,
} from "../trade/codes/check-digit";
import { palletCode } from "../trade/codes/pallet-code";
import { defineFunction } from "./define";
import {
  nativeCaseCode,
  nativeCheckDigit,
  nativePalletCode,
  nativeWithCheckDigit,
} from "./native/codes";

const asText =
  "A number cell is refused: it has lost its leading zeros and holds 15 digits at most. Type an apostrophe before the first digit, or format the cell as text first. Spaces and dashes between digits are passed over, but not by the plain form.";

const sumWords = (digits: string): string => {
  const body = onlyDigits(digits, "digits");
  return `from the right the digits of ${body} count 3, 1, 3, 1, …: together ${weightedSum(body)}`;
};

export const codeFunctions = [
  defineFunction({
    name: "CHECK_DIGIT",
    family: "Totes and codes",
    summary: "The check digit that goes behind the digits of a bar code.",
    question: "Which check digit belongs behind this number?",
    args: { digits: terms.digits },
    gives: { about: "check digit", unit: "" },
    basis: ["gs1CheckDigit"],
    notes: [asText],
    examples: [
      {
        args: ["629104150021"],
        gives: 3,
        source: "printed example of GS1 Hong Kong",
      },
      {
        args: ["40000100100"],
        gives: 4,
        source:
          "worked example, arithmetic: 3 × 5 + 1 = 16, and 4 more make 20",
      },
    ],
    native: ({ digits }) => nativeCheckDigit(digits),
    compute: ({ digits }) => checkDigit(digits),
    why: ({ digits }, answer) =>
      `${sumWords(digits)}; ${String(answer)} more makes a multiple of ten`,
  }),
  defineFunction({
    name: "WITH_CHECK_DIGIT",
    family: "Totes and codes",
    summary: "The digits of a bar code with their check digit behind them.",
    question: "What is the whole number with its check digit?",
    args: { digits: terms.digits },
    gives: { about: "the whole number, as text", unit: "" },
    basis: ["gs1CheckDigit"],
    notes: [asText],
    examples: [
      {
        args: ["629104150021"],
        gives: "6291041500213",
        source: "printed example of GS1 Hong Kong",
      },
      {
        args: ["04000010010"],
        gives: "040000100102",
        source:
          "hand arithmetic: 3 × 1 + 4 + 1 = 8, and 2 more make 10; the leading zero stays",
      },
    ],
    native: ({ digits }) => nativeWithCheckDigit(digits),
    compute: ({ digits }) => withCheckDigit(digits),
    why: ({ digits }, answer) =>
      `${sumWords(digits)}; ${String(checkDigit(digits))} more makes a multiple of ten: ${String(answer)}`,
  }),
  defineFunction({
    name: "CASE_CODE",
    family: "Totes and codes",
    summary: "The 14 digits of a case, from the number of one bottle in it.",
    question: "Which number goes on the case of these bottles?",
    args: { gtin: terms.gtin, indicator: optional(terms.indicator, 1) },
    gives: { about: "the case's number, as text", unit: "" },
    basis: ["gs1CheckDigit", "gs1Keys"],
    notes: [
      asText,
      "The bottle's own check digit is checked, left off, and a new one worked out for the case.",
      "Give each size of case of one bottle an indicator of its own, 1 to 8. 9 is for goods sold by measured weight and is refused.",
    ],
    examples: [
      {
        args: ["400001001004"],
        gives: "10400001001001",
        source:
          "worked example, arithmetic: 1 0400001001 00, then its own check digit",
      },
      {
        args: ["6291041500213", 2],
        gives: "26291041500217",
        source:
          "hand arithmetic: 3 × (2 + 2 + 1 + 4 + 5 + 0 + 1) + (6 + 9 + 0 + 1 + 0 + 2) = 63, and 7 more make 70",
      },
    ],
    native: nativeCaseCode,
    compute: ({ gtin, indicator }) => caseCode(gtin, indicator),
    why: ({ gtin, indicator }, answer) => {
      const code = String(answer);
      return `${indicator}, then ${code.slice(1, -1)} (${onlyDigits(gtin, "gtin")} without its check digit, zeros in front), then the new check digit ${code.slice(-1)}: ${code}`;
    },
  }),
  defineFunction({
    name: "PALLET_CODE",
    family: "Totes and codes",
    summary: "The 18 digits of a pallet, from your prefix and its own serial.",
    question: "Which number goes on this pallet?",
    args: {
      prefix: terms.prefix,
      serial: terms.serial,
      extension: optional(terms.extension, 0),
    },
    gives: { about: "the pallet's number, as text", unit: "" },
    basis: ["gs1CheckDigit", "gs1Keys"],
    notes: [
      asText,
      "The serial gets zeros in front until prefix and serial are 16 digits. Never use a serial twice while a pallet with it may still be about.",
    ],
    examples: [
      {
        args: ["0400001", 1234],
        gives: "004000010000012345",
        source:
          "hand arithmetic: 3 × (4 + 2 + 4) + 3 + 1 + 1 = 35, and 5 more make 40",
      },
      {
        args: ["7610425", "002123456", 3],
        gives: "376104250021234569",
        source: "an example remembered from a GS1 leaflet, and hand arithmetic",
      },
    ],
    native: nativePalletCode,
    compute: ({ prefix, serial, extension }) =>
      palletCode(prefix, serial, extension),
    why: ({ prefix, serial, extension }, answer) => {
      const code = String(answer);
      const company = onlyDigits(prefix, "prefix");
      return `${extension}, prefix ${company}, serial ${serial} as ${code.slice(1 + company.length, -1)}, check digit ${code.slice(-1)}: ${code}`;
    },
  }),
];
