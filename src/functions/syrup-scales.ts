import type { Brix } from "../measures/quantity";
import { reference } from "../measures/quantity";
import { fromHouse, unitNamed } from "../measures/units";
import { crystalsAbove, solidsLimits } from "../standards/grades";
import { baumeModulus } from "../standards/hydrometer";
import { syrupTerms as terms } from "../terms/syrup";
import { optional } from "../terms/term";
import { colorClass } from "../trade/syrup/color";
import { brixFromDensity, density, waterDensity } from "../trade/syrup/density";
import { baume, brixFromBaume, specificGravity } from "../trade/syrup/gravity";
import { waterForBrix } from "../trade/syrup/water";
import { scalds } from "./caution";
import { defineFunction } from "./define";
import { nativeColdDensity } from "./native/density";
import { decimal } from "./native/formula";
import { entered, fahrenheit, figure } from "./wording";

const modelOutput =
  "model output of the cited polynomial, not a published table value";
const sixtyFahrenheit =
  "The scale is at 68 °F. Syrup that a hydrometer marked for 60 °F reads as 36 °Bé or 66.9 °Bx has about 66.7 °Bx at 68 °F.";

const nativeGravity = (brix: string): string =>
  `(${nativeColdDensity(brix)}/${decimal(waterDensity(reference))})`;

export const syrupScaleFunctions = [
  defineFunction({
    name: "SPECIFIC_GRAVITY",
    family: "Syrup",
    summary: "True specific gravity of syrup, both syrup and water at 68 °F.",
    question: "What is the specific gravity of this syrup?",
    args: { brix: terms.brix },
    gives: { about: "true specific gravity 20/20", unit: "" },
    basis: ["icumsaDensity", "bettinSpieweck"],
    uncertainty: "±0.0001.",
    notes: [
      "Apparent specific gravity, as some tables print it, is 0.0004 higher at 66 °Bx.",
    ],
    examples: [
      { args: [66], gives: 1.32504, within: 0.000005, source: modelOutput },
      { args: [66.9], gives: 1.33058, within: 0.000005, source: modelOutput },
    ],
    native: ({ brix }) => nativeGravity(brix),
    compute: ({ brix }) => specificGravity(brix),
    why: ({ brix }, answer) =>
      `${figure(density(brix), 6)} kg/L (${entered(brix)} °Bx at 68 °F) ÷ ${figure(waterDensity(reference) / 1000, 6)} kg/L (water at 68 °F) = ${figure(answer, 6)}`,
  }),
  defineFunction({
    name: "BRIX_FROM_DENSITY",
    family: "Syrup",
    summary: "Brix of syrup from its true density and temperature.",
    question: "What Brix is syrup of this density?",
    args: {
      density: terms.density,
      temperature: optional(terms.temperature, 68),
    },
    gives: { about: "Brix", unit: "°Bx" },
    basis: ["icumsaDensity", "bettinSpieweck"],
    uncertainty: "±0.05 °Bx at 68 °F; ±0.3 °Bx at 175-210 °F.",
    examples: [
      { args: [1.32266], gives: 66, within: 0.002, source: modelOutput },
      {
        args: [1.28973, "185 °F"],
        gives: 66.9,
        within: 0.002,
        source: modelOutput,
      },
    ],
    noNative:
      "the density is a polynomial in the Brix, which is turned round by trying values until they fit; no plain formula does that",
    compute: ({ density, temperature }) =>
      brixFromDensity(density, temperature),
    why: ({ density, temperature }, answer) =>
      `${entered(density)} kg/L at ${fahrenheit(temperature)} is the density of sucrose of ${figure(answer)} °Bx`,
  }),
  defineFunction({
    name: "BAUME",
    family: "Syrup",
    summary: "Degrees Baumé of syrup from its Brix.",
    question: "How many degrees Baumé is this syrup?",
    args: { brix: terms.brix },
    gives: { about: "degrees Baumé, modulus 145", unit: "°Bé" },
    basis: ["baumeScale", "icumsaDensity"],
    uncertainty: "±0.05 °Bé.",
    notes: [sixtyFahrenheit],
    examples: [
      {
        args: [66],
        gives: 35.6,
        within: 0.05,
        source: "maple hydrometer instruction sheet: 35.6 °Bé for 66.0 °Bx",
      },
      {
        args: [66.9],
        gives: 36,
        within: 0.05,
        source: "Vermont density rule as quoted: 36 °Bé is 66.9 °Bx",
      },
    ],
    native: ({ brix }) =>
      `(${baumeModulus}-${baumeModulus}/${nativeGravity(brix)})`,
    compute: ({ brix }) => baume(brix),
    why: ({ brix }, answer) =>
      `145 − 145 ÷ ${figure(specificGravity(brix), 6)} (specific gravity of ${entered(brix)} °Bx) = ${figure(answer, 4)} °Bé`,
  }),
  defineFunction({
    name: "BRIX_FROM_BAUME",
    family: "Syrup",
    summary: "Brix of syrup from its degrees Baumé.",
    question: "What Brix is this Baumé?",
    args: { baume: terms.baume },
    gives: { about: "Brix", unit: "°Bx" },
    basis: ["baumeScale", "icumsaDensity"],
    uncertainty: "±0.1 °Bx.",
    notes: [sixtyFahrenheit],
    examples: [
      {
        args: [36],
        gives: 66.9,
        within: 0.1,
        source: "Vermont density rule as quoted: 36 °Bé is 66.9 °Bx",
      },
      {
        args: [37],
        gives: 68.9,
        within: 0.1,
        source: "Vermont density rule as quoted: 37 °Bé is 68.9 °Bx",
      },
    ],
    noNative:
      "the density is a polynomial in the Brix, which is turned round by trying values until they fit; no plain formula does that",
    compute: ({ baume }) => brixFromBaume(baume),
    why: ({ baume }, answer) =>
      `145 ÷ (145 − ${entered(baume)}) = ${figure(baumeModulus / (baumeModulus - baume), 6)}, the specific gravity of ${figure(answer)} °Bx`,
  }),
  defineFunction({
    name: "COLOR_CLASS",
    family: "Syrup",
    summary: "Colour class of maple syrup from the light it lets through.",
    question: "Which colour class is this syrup?",
    args: { transmittance: terms.transmittance },
    gives: { about: "colour class", unit: "" },
    basis: ["gradeColors"],
    caution:
      "A class is also a matter of flavour; the grader decides, and colour drifts with heat and storage.",
    uncertainty:
      "The limits are exact; a reading within the error of your instrument of a limit may fall to either side.",
    notes: [
      'A number of 1 or less is refused, because a cell formatted as per cent holds 0.75 for 75 %; type 75 or "0.75 %".',
    ],
    examples: [
      {
        args: [75],
        gives: "Golden",
        source: "the grade rules: 75.0 % and more is Golden",
      },
      {
        args: ["49.9 %"],
        gives: "Dark",
        source: "the grade rules: 25.0 to less than 50.0 % is Dark",
      },
    ],
    native: ({ transmittance: t }) =>
      `IF(AND(${t}>0,${t}<=1),NA(),IF(${t}>=75,"Golden",IF(${t}>=50,"Amber",IF(${t}>=25,"Dark","Very Dark"))))`,
    compute: ({ transmittance }) => colorClass(transmittance),
    why: ({ transmittance }, answer) =>
      `${entered(transmittance)} % of the light comes through: ${String(answer)} (Golden from 75 %, Amber from 50 %, Dark from 25 %)`,
  }),
  defineFunction({
    name: "WATER_FOR_BRIX",
    family: "Syrup",
    summary:
      "Pounds of water to add to syrup, or to boil off, for a target Brix.",
    question: "How much water brings this syrup to the right Brix?",
    args: {
      weight: terms.weight,
      brix: terms.brix,
      target: terms.targetBrix,
    },
    gives: { about: "water to add; below zero, to boil off", unit: "lb" },
    basis: ["arithmetic", "gradeSolids", "commonPractice"],
    caution: scalds,
    examples: [
      {
        args: [1000, 68, 66.9],
        gives: 16.4425,
        within: 0.00005,
        source: "1,000 × (68 ÷ 66.9 − 1) by hand",
      },
      {
        args: [1000, 65, "66.9"],
        gives: -28.4006,
        within: 0.00005,
        source: "1,000 × (65 ÷ 66.9 − 1) by hand",
      },
    ],
    native: ({ weight, brix, target }) => `(${weight}*(${brix}/${target}-1))`,
    compute: ({ weight, brix, target }) =>
      fromHouse(waterForBrix(weight, brix, target), unitNamed("lb")),
    why: ({ weight, brix, target }, answer) =>
      `${entered(fromHouse(weight, unitNamed("lb")))} lb × (${entered(brix)} ÷ ${entered(target)} °Bx − 1) = ${figure(Math.abs(Number(answer)))} lb of water ${Number(answer) < 0 ? "to boil off" : "to add"}${targetCaution(target)}`,
  }),
];

function targetCaution(target: Brix): string {
  if (target > crystalsAbove)
    return `; above ${crystalsAbove} °Bx syrup may form crystals in store${target > solidsLimits.most ? `, and graded syrup may have ${solidsLimits.most} at most` : ""}`;
  return target < solidsLimits.least
    ? `; graded syrup must have ${solidsLimits.least} °Bx at least, thinner syrup spoils`
    : "";
}
