import { as, type Brix } from "../measures/quantity";
import {
  fromHouse,
  KG_PER_LB,
  KILOJOULES_PER_BTU,
  unitNamed,
} from "../measures/units";
import { sucroseViscosity } from "../standards/viscosity";
import { syrupTerms as terms } from "../terms/syrup";
import { optional } from "../terms/term";
import { boilingPoint } from "../trade/syrup/boiling";
import { viscosity } from "../trade/syrup/viscosity";
import { heatCapacity } from "../trade/syrup/heat";
import { scalds } from "./caution";
import { defineFunction } from "./define";
import { celsius, decimal, pick } from "./native/formula";
import { nativeHeatCapacity } from "./native/heat";
import { entered, fahrenheit, figure } from "./wording";

/** kJ/(kg·K) in one BTU/(lb·°F). */
const KILOJOULE_CAPACITY = (KILOJOULES_PER_BTU / KG_PER_LB) * 1.8;

export const syrupHeatFunctions = [
  defineFunction({
    name: "HEAT_CAPACITY",
    family: "Syrup",
    summary: "Heat that warms a pound of syrup by one degree.",
    question: "How much heat does syrup take up?",
    args: {
      brix: terms.brix,
      temperature: terms.temperature,
      unit: optional(terms.heatCapacityUnit, "BTU/lb·F"),
    },
    gives: { about: "heat capacity", unit: "BTU/lb·F" },
    basis: ["heatCapacityForm"],
    uncertainty: "±3 %: the tables behind the formula were not seen.",
    caution: scalds,
    examples: [
      {
        args: [66, "20 °C", "kJ/kg·K"],
        gives: 2.629,
        within: 0.0005,
        source: "model output of the cited form, not a published table value",
      },
      {
        args: [66, 185],
        gives: 0.7048,
        within: 0.00005,
        source: "the form's 2.951 kJ/kg·K at 85 °C ÷ 4.1868, by hand",
      },
    ],
    native: ({ brix, temperature, unit }) =>
      `(${nativeHeatCapacity(brix, temperature)}/${pick(unit, [
        ["kJ/kg·K", "1"],
        ["BTU/lb·F", decimal(KILOJOULE_CAPACITY)],
      ])})`,
    compute: ({ brix, temperature, unit }) =>
      heatCapacity(brix, temperature) /
      (unit === "kJ/kg·K" ? 1 : KILOJOULE_CAPACITY),
    why: ({ brix, temperature, unit }, answer) =>
      `sucrose of ${figure(brix)} °Bx at ${fahrenheit(temperature)} takes ${figure(answer, 4)} ${unit}, give or take 3 %`,
  }),
  defineFunction({
    name: "VISCOSITY",
    family: "Syrup",
    summary: "Viscosity of syrup from its Brix and temperature.",
    question: "How thick is syrup at this temperature?",
    args: { brix: terms.brix, temperature: terms.temperature },
    gives: { about: "viscosity", unit: "mPa·s" },
    basis: ["genotelle"],
    uncertainty:
      "Against handbook tables of pure sucrose up to 70 °Bx: ±8 % at 50-212 °F (±2 % at 60 °Bx hot), up to 14 % high near freezing. No measurement of maple syrup was found.",
    caution: scalds,
    examples: [
      {
        args: [50, 68],
        gives: 15.431,
        within: 0.5,
        source:
          "15.431 at 50 % and 20 °C in a handbook of chemistry and physics",
      },
      {
        args: [66.9, 185],
        gives: 9.6,
        within: 0.05,
        source:
          "model output of the cited formula, not a published table value",
      },
    ],
    native: ({ brix, temperature }) => nativeViscosity(brix, temperature),
    compute: ({ brix, temperature }) => viscosity(brix, temperature),
    why: ({ brix, temperature }, answer) =>
      `sucrose of ${entered(brix)} °Bx at ${fahrenheit(temperature)} has a viscosity of ${figure(answer, 3)} mPa·s${brix > sucroseViscosity.checkedTo ? `, unchecked above ${sucroseViscosity.checkedTo} °Bx` : ""}`,
  }),
  defineFunction({
    name: "BOILING_POINT",
    family: "Syrup",
    summary:
      "Temperature at which syrup of this Brix boils under today's air pressure.",
    question: "At what temperature do I draw off?",
    args: { brix: terms.brix, pressure: optional(terms.pressure, 29.92) },
    gives: { about: "boiling point", unit: "°F" },
    basis: ["starzakPeacock", "steamPressure"],
    uncertainty:
      "±0.2 °F, which is ±0.5 °Bx: good for drawing off, not for compliance. It runs 0.1 °F above the figures printed for maple.",
    caution: scalds,
    examples: [
      {
        args: [67],
        gives: 219.5,
        within: 0.2,
        source: "maple article: draw off 67 °Bx at 104.2 °C (219.5 °F)",
      },
      {
        args: [0],
        gives: 211.95,
        within: 0.005,
        source:
          "steam tables, IAPWS industrial formulation of 1997, as a library of steam properties gives it",
      },
    ],
    noNative:
      "the temperature stands both in the vapour pressure and in the activity of the water and is found by trying values until they fit; no plain formula does that",
    compute: ({ brix, pressure }) =>
      fromHouse(boilingPoint(brix, pressure), unitNamed("°F")),
    why: ({ brix, pressure }, answer) => {
      const water = fromHouse(
        boilingPoint(as<Brix>(0), pressure),
        unitNamed("°F"),
      );
      return `water boils at ${figure(water, 5)} °F under ${figure(fromHouse(pressure, unitNamed("inHg")), 4)} inHg; sugar of ${entered(brix)} °Bx raises that by ${figure(Number(answer) - water, 3)} °F to ${figure(answer, 5)} °F`;
    },
  }),
];

function nativeViscosity(brix: string, temperature: string): string {
  const { a, b, c, d, e } = sucroseViscosity;
  const x = `(${brix}/(1900-18*${brix}))`;
  const warm = celsius(temperature);
  return `(10^(${a}*${x}-${b}+(30-${warm})/(91+${warm})*(${c}+${d}*${x}^${e})))`;
}
