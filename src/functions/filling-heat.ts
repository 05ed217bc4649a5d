import { as, type Celsius } from "../measures/quantity";
import { fromHouse, KG_PER_LB, unitNamed } from "../measures/units";
import { fuels } from "../standards/fuels";
import { fillingTerms as terms } from "../terms/filling";
import { syrupTerms } from "../terms/syrup";
import { fuelForHeat } from "../trade/filling/fuel";
import { heatCapacity, heatEnergy } from "../trade/syrup/heat";
import { scalds } from "./caution";
import { defineFunction } from "./define";
import { decimal, pick } from "./native/formula";
import { nativeHeatCapacity } from "./native/heat";
import { perUnit, toUnit } from "./native/units";
import { entered, fahrenheit, figure, percent } from "./wording";

const inBtu = (kilojoules: number): number =>
  fromHouse(kilojoules, unitNamed("BTU"));

export const fillingHeatFunctions = [
  defineFunction({
    name: "HEAT_ENERGY",
    family: "Filling",
    summary: "Heat that brings syrup from one temperature to another.",
    question: "How much heat does this batch need?",
    args: {
      weight: syrupTerms.weight,
      brix: syrupTerms.brix,
      from: terms.fromTemperature,
      to: terms.toTemperature,
    },
    gives: { about: "heat into the syrup", unit: "BTU" },
    basis: ["heatCapacityForm", "usCustomary"],
    uncertainty: "±3 %, as the heat capacity.",
    caution: scalds,
    notes: [
      "Heat to hold the syrup hot, and heat lost by kettle and pipes, come on top.",
      "Below zero when the syrup cools: heat to take away.",
    ],
    examples: [
      {
        args: [1, 0, 100, 101],
        gives: 1,
        within: 0.000001,
        source:
          "definition of the BTU, 4.1868 kJ/(kg·K) is 1 BTU/(lb·°F); plain water",
      },
      {
        args: [1000, 66, 68, 185],
        gives: 77_968,
        within: 5,
        source:
          "1,000 lb × 117 °F × (2.6292 + 2.9510) ÷ 2 ÷ 4.1868, by hand from the form",
      },
    ],
    native: ({ weight, brix, from, to }) =>
      `((${weight})${toUnit("lb")}*${nativeHeatCapacity(brix, `((${from}+${to})/2)`)}*(${to}-${from})*5/9${perUnit("BTU")})`,
    compute: ({ weight, brix, from, to }) =>
      inBtu(heatEnergy(weight, brix, from, to)),
    why: ({ weight, brix, from, to }, answer) => {
      const halfway = as<Celsius>((from + to) / 2);
      const perPound = inBtu(heatCapacity(brix, halfway)) * KG_PER_LB * (5 / 9);
      return `${entered(weight / KG_PER_LB)} lb × ${figure(perPound, 4)} BTU/lb·F (${entered(brix)} °Bx, half way at ${fahrenheit(halfway)}) × ${entered((to - from) * 1.8)} °F = ${figure(answer, 6)} BTU, give or take 3 %`;
    },
  }),
  defineFunction({
    name: "FUEL_FOR_HEAT",
    family: "Filling",
    summary: "Fuel to buy for so much heat, in the unit the fuel is sold by.",
    question: "How much propane does that heat take?",
    args: {
      energy: terms.energy,
      fuel: terms.fuel,
      efficiency: terms.efficiency,
    },
    gives: {
      about: "fuel: gallons of propane or fuel oil, therms, or kilowatt-hours",
      unit: "gal, therm or kWh",
    },
    basis: ["fuelHeat"],
    uncertainty: "As good as the efficiency you enter.",
    notes: Object.entries(fuels).map(
      ([name, { btu, soldBy }]) =>
        `${name}: ${btu.toLocaleString("en-US")} BTU per ${soldBy} (common practice, no source).`,
    ),
    examples: [
      {
        args: [106_249, "propane", 0.68],
        gives: 1.7076,
        within: 0.00005,
        source:
          "worked example: 106,249 ÷ 0.68 ÷ 91,500, by hand with the common-practice heat",
      },
      {
        args: [341_214, "electricity", "100 %"],
        gives: 100,
        source: "341,214 ÷ 3,412.14, by hand",
      },
    ],
    native: ({ energy, fuel, efficiency }) =>
      `(${energy}/${efficiency}/${pick(
        fuel,
        Object.entries(fuels).map(([name, { btu }]) => [name, decimal(btu)]),
      )})`,
    compute: ({ energy, fuel, efficiency }) =>
      fuelForHeat(energy, fuel, efficiency),
    why: ({ energy, fuel, efficiency }, answer) =>
      `${entered(inBtu(energy))} BTU ÷ ${percent(efficiency)} ÷ ${figure(fuels[fuel].btu, 6)} BTU per ${fuels[fuel].soldBy} of ${fuel} = ${figure(answer)} ${fuels[fuel].soldBy}`,
  }),
];
