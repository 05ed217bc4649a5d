import type { Brix, Celsius, Litres } from "../measures/quantity";
import { fromHouse, unitNamed } from "../measures/units";
import { syrupTerms as terms } from "../terms/syrup";
import { optional } from "../terms/term";
import { density, poundsPerGallon } from "../trade/syrup/density";
import { volumeOf, weightOf } from "../trade/syrup/weight";
import { inPounds } from "./by-weight";
import { type Answer, type Answers, defineFunction } from "./define";
import {
  nativeDensity,
  nativeInAir,
  nativePoundsPerGallon,
} from "./native/density";
import { fromUnit, toUnit } from "./native/units";
import { entered, fahrenheit, figure } from "./wording";

const modelOutput =
  "model output of the cited polynomial, not a published table value";
const hotAndCold =
  "±0.02 % at 68 °F; ±0.1 % at 175-210 °F, where only the maple hydrometer chart bears it out.";
const asSucrose =
  "Maple syrup is taken as sucrose of the same Brix, as the grade rules do.";

export const syrupFunctions = [
  defineFunction({
    name: "DENSITY",
    family: "Syrup",
    summary: "True density of syrup from its Brix and temperature.",
    question: "How dense is this syrup at this temperature?",
    args: {
      brix: terms.brix,
      temperature: optional(terms.temperature, 68),
      unit: optional(terms.densityUnit, "kg/L"),
    },
    gives: { about: "true density", unit: "kg/L" },
    basis: ["icumsaDensity", "bettinSpieweck"],
    uncertainty: hotAndCold,
    notes: [asSucrose],
    examples: [
      {
        args: [66.9, "185 °F"],
        gives: 1.28973,
        within: 0.000005,
        source: modelOutput,
      },
      {
        args: [66, 68, "kg/m3"],
        gives: 1322.66,
        within: 0.005,
        source: modelOutput,
      },
    ],
    native: ({ brix, temperature, unit }) =>
      `(${nativeDensity(brix, temperature)}/1000${fromUnit(terms.densityUnit.choices, unit)})`,
    compute: ({ brix, temperature, unit }) =>
      fromHouse(density(brix, temperature), unitNamed(unit)),
    why: ({ brix, temperature, unit }, answer) =>
      `sucrose of ${entered(brix)} °Bx at ${fahrenheit(temperature)} has a true density of ${figure(answer, 6)} ${unit}`,
  }),
  defineFunction({
    name: "POUNDS_PER_GALLON",
    family: "Syrup",
    summary: "Pounds a US gallon of syrup weighs, on a scale in air.",
    question: "How many pounds is a gallon of this syrup?",
    args: { brix: terms.brix, temperature: optional(terms.temperature, 68) },
    gives: { about: "weight of a US gallon in air", unit: "lb/gal" },
    basis: ["icumsaDensity", "airBuoyancy", "usCustomary"],
    uncertainty: "±0.003 lb/gal at 68 °F against published tables.",
    notes: [asSucrose],
    examples: [
      {
        args: [66],
        gives: 11.0297,
        within: 0.00005,
        source:
          "model output of the cited polynomial; 11.027 is printed by an extension table",
      },
      {
        args: [66.9],
        gives: 11.0759,
        within: 0.00005,
        source:
          "model output of the cited polynomial; 11.073 is printed by an extension table",
      },
    ],
    native: ({ brix, temperature }) => nativePoundsPerGallon(brix, temperature),
    compute: ({ brix, temperature }) => poundsPerGallon(brix, temperature),
    why: ({ brix, temperature }, answer) =>
      `one US gallon (3.785412 L) of ${entered(brix)} °Bx syrup at ${fahrenheit(temperature)} weighs ${figure(answer, 6)} lb on a scale in air`,
  }),
  defineFunction({
    name: "WEIGHT_OF",
    family: "Syrup",
    summary: "What a volume of syrup weighs, on a scale in air.",
    question: "How much do these gallons weigh?",
    args: {
      volume: terms.volumeInGallons,
      brix: terms.brix,
      temperature: optional(terms.temperature, 68),
      unit: optional(terms.massUnit, "lb"),
    },
    gives: { about: "weight in air", unit: "lb" },
    basis: ["icumsaDensity", "airBuoyancy", "usCustomary"],
    uncertainty: hotAndCold,
    notes: [
      "The volume is as it stands at the temperature given; hot gallons weigh less than cold ones.",
    ],
    examples: [
      {
        args: [1, 66],
        gives: 11.0297,
        within: 0.00005,
        source: modelOutput,
      },
      {
        args: ["252 mL", 66.9, 68, "g"],
        gives: 334.45,
        within: 0.005,
        source:
          "(1328.19 − 1.2) ÷ (1 − 1.2/8400) × 0.252 by hand from the model's density",
      },
    ],
    native: ({ volume, brix, temperature, unit }) =>
      `((${volume})${toUnit("gal")}*${nativeInAir(nativeDensity(brix, temperature))}/1000${fromUnit(terms.massUnit.choices, unit)})`,
    compute: ({ volume, brix, temperature, unit }) =>
      fromHouse(weightOf(volume, brix, temperature), unitNamed(unit)),
    why: ({ volume, brix, temperature, unit }, answer) =>
      `${figure(inGallons(volume), 7)} gal × ${heaviness(brix, temperature)} = ${figure(inPounds(weightOf(volume, brix, temperature)), 6)} lb${inUnit(answer, unit, "lb")}`,
  }),
  defineFunction({
    name: "VOLUME_OF",
    family: "Syrup",
    summary: "The volume of syrup that weighs so much on a scale in air.",
    question: "How many gallons is this weight?",
    args: {
      weight: terms.weight,
      brix: terms.brix,
      temperature: optional(terms.temperature, 68),
      unit: optional(terms.volumeUnit, "gal"),
    },
    gives: { about: "volume at the temperature given", unit: "gal" },
    basis: ["icumsaDensity", "airBuoyancy", "usCustomary"],
    uncertainty: hotAndCold,
    examples: [
      {
        args: [11.0297, 66],
        gives: 1,
        within: 0.000005,
        source: modelOutput,
      },
      {
        args: ["2,912 lb", 66.9],
        gives: 262.91,
        within: 0.005,
        source: "2,912 ÷ 11.0759 by hand from the model's lb/gal",
      },
    ],
    native: ({ weight, brix, temperature, unit }) =>
      `((${weight})${toUnit("lb")}/${nativeInAir(nativeDensity(brix, temperature))}*1000${fromUnit(terms.volumeUnit.choices, unit)})`,
    compute: ({ weight, brix, temperature, unit }) =>
      fromHouse(volumeOf(weight, brix, temperature), unitNamed(unit)),
    why: ({ weight, brix, temperature, unit }, answer) =>
      `${figure(inPounds(weight), 7)} lb ÷ ${heaviness(brix, temperature)} = ${figure(inGallons(volumeOf(weight, brix, temperature)), 6)} gal${inUnit(answer, unit, "gal")}`,
  }),
];

const inGallons = (volume: Litres): number =>
  fromHouse(volume, unitNamed("gal"));

/** "11.0759 lb/gal (66.9 °Bx at 68 °F, in air)" */
const heaviness = (brix: Brix, temperature: Celsius): string =>
  `${figure(poundsPerGallon(brix, temperature), 6)} lb/gal (${entered(brix)} °Bx at ${fahrenheit(temperature)}, in air)`;

/** The answer once more where another unit than the arithmetic's was asked for. */
const inUnit = (
  answer: Answer | Answers,
  unit: string,
  shown: string,
): string => (unit === shown ? "" : `, which is ${figure(answer, 6)} ${unit}`);
