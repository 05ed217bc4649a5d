import { as, type Celsius, reference } from "../measures/quantity";
import { brixOfIndex, refractometerCorrection } from "../standards/refraction";
import { syrupTerms as terms } from "../terms/syrup";
import { optional, type ValueOf } from "../terms/term";
import { hydrometerBrix, hydrometerReading } from "../trade/syrup/hydrometer";
import {
  brixFromIndex,
  refractiveIndex,
  refractometerBrix,
} from "../trade/syrup/refraction";
import { scalds } from "./caution";
import { defineFunction } from "./define";
import { celsius, horner } from "./native/formula";
import { entered, fahrenheit, figure } from "./wording";

const hydrometerNote =
  "Brix is true solids at 68 °F. The 66.9 °Bx of a hydrometer marked for 60 °F is about 66.7 here: enter what the syrup truly has.";

export const syrupReadingFunctions = [
  defineFunction({
    name: "REFRACTIVE_INDEX",
    family: "Syrup",
    summary: "Refractive index of syrup at 68 °F from its Brix.",
    question: "What refractive index should this syrup show?",
    args: { brix: terms.brix },
    gives: { about: "refractive index, sodium D line, 20 °C", unit: "nD" },
    basis: ["refractionFit"],
    uncertainty: "±0.0001, so ±0.05 °Bx.",
    examples: [
      {
        args: [66],
        gives: 1.45589,
        within: 0.000005,
        source: "model output of the cited fit, not a published table value",
      },
      {
        args: [60],
        gives: 1.4419,
        within: 0.0001,
        source: "1.4419 at 60 % in a handbook of chemistry and physics",
      },
    ],
    noNative:
      "the published fit gives the Brix of an index, and the index of a Brix is found by trying values until they fit; no plain formula does that",
    compute: ({ brix }) => refractiveIndex(brix),
    why: ({ brix }, answer) =>
      `sucrose of ${entered(brix)} °Bx bends light with an index of ${figure(answer, 6)} at 68 °F`,
  }),
  defineFunction({
    name: "BRIX_FROM_INDEX",
    family: "Syrup",
    summary: "Brix of syrup from its refractive index.",
    question: "What Brix is this refractive index?",
    args: {
      index: terms.index,
      temperature: optional(terms.sampleTemperature, 68),
    },
    gives: { about: "Brix at 68 °F", unit: "°Bx" },
    basis: ["refractionFit", "refractometerTable"],
    uncertainty: "±0.05 °Bx at 68 °F; ±0.1 °Bx elsewhere in 50-86 °F.",
    examples: [
      {
        args: [1.45589],
        gives: 66,
        within: 0.003,
        source: "model output of the cited fit, not a published table value",
      },
      {
        args: [1.45589, "25 °C"],
        gives: 66.396,
        within: 0.003,
        source: "66.0 and the fitted correction of +0.396 at 25 °C",
      },
    ],
    native: ({ index, temperature }) =>
      corrected(horner(brixOfIndex, index), temperature),
    compute: ({ index, temperature }) => brixFromIndex(index, temperature),
    why: ({ index, temperature }, answer) =>
      temperature === reference
        ? `at 68 °F an index of ${entered(index)} is ${figure(answer)} °Bx`
        : `an index of ${entered(index)} reads ${figure(brixFromIndex(index))} °Bx; corrected from ${fahrenheit(temperature)} to 68 °F it is ${figure(answer)} °Bx`,
  }),
  defineFunction({
    name: "BRIX_CORRECTED",
    family: "Syrup",
    summary: "Brix at 68 °F from a reading taken at another temperature.",
    question: "What is this reading at 68 °F?",
    args: {
      reading: terms.readingBrix,
      temperature: terms.sampleTemperature,
      instrument: optional(terms.instrument, "refractometer"),
    },
    gives: { about: "Brix at 68 °F", unit: "°Bx" },
    basis: [
      "refractometerTable",
      "icumsaDensity",
      "baumeScale",
      "hydrometerGlass",
      "vermontChart",
    ],
    uncertainty:
      "Refractometer ±0.05 °Bx; hydrometer ±0.1 °Bx cold, ±0.3 °Bx hot.",
    caution: scalds,
    notes: [
      "For refractometers without automatic compensation only; those with it already show Brix at 68 °F.",
      "A hydrometer marked for 60 °F that reads 66.9 at 60 °F comes to about 66.7 at 68 °F: the two scales differ.",
    ],
    examples: [
      {
        args: [66, "10 °C"],
        gives: 65.26,
        within: 0.04,
        source: "older international table: −0.75 for 65 % at 10 °C",
      },
      {
        args: [60.4, 185, "hydrometer 60 F"],
        gives: 66.66,
        within: 0.25,
        source: "maple hydrometer chart: 60.4 at 185 °F is 36 °Bé at 60 °F",
      },
    ],
    noNative:
      "for a hydrometer the density is turned round by trying values until they fit, which no plain formula does; SYRUP.BRIX_FROM_INDEX holds the refractometer's correction",
    compute: ({ reading, temperature, instrument }) =>
      instrument === "refractometer"
        ? refractometerBrix(reading, temperature)
        : hydrometerBrix(reading, temperature, calibrationOf(instrument)),
    why: ({ reading, temperature, instrument }, answer) =>
      `${entered(reading)} °Bx read at ${fahrenheit(temperature)} on a ${instruments[instrument]} ${correctionWords(Number(answer) - reading)} = ${figure(answer)} °Bx at 68 °F`,
  }),
  defineFunction({
    name: "HYDROMETER_READING",
    family: "Syrup",
    summary:
      "What a hydrometer should read in syrup of this Brix when it is hot.",
    question: "What should the float read in hot syrup?",
    args: {
      brix: terms.brix,
      temperature: terms.sampleTemperature,
      calibration: optional(terms.calibration, 60),
      scale: optional(terms.hydrometerScale, "Brix"),
    },
    gives: { about: "reading on the float's scale", unit: "°Bx or °Bé" },
    basis: ["icumsaDensity", "baumeScale", "hydrometerGlass", "vermontChart"],
    uncertainty: "±0.1 °Bé and ±0.3 °Bx against the maple chart, 50-209 °F.",
    caution: `${scalds} For compliance use the chart of your state, not this model.`,
    notes: [hydrometerNote],
    examples: [
      {
        args: [66.66, 185, 60, "Baume"],
        gives: 32.75,
        within: 0.1,
        source: "maple hydrometer chart: 32.75 °Bé at 185 °F",
      },
      {
        args: [66.66, 185],
        gives: 60.4,
        within: 0.28,
        source: "maple hydrometer chart: 60.4 °Bx at 185 °F",
      },
    ],
    noNative:
      "the float's scale is turned round by trying values until they fit, which no plain formula does",
    compute: ({ brix, temperature, calibration, scale }) =>
      hydrometerReading(brix, temperature, calibration, scale),
    why: ({ brix, temperature, calibration, scale }, answer) =>
      `a float marked for ${fahrenheit(calibration)} stands at ${figure(answer, 4)} ${scale === "Brix" ? "°Bx" : "°Bé"} in syrup of ${entered(brix)} °Bx at ${fahrenheit(temperature)}`,
  }),
];

type Instrument = ValueOf<typeof terms.instrument>;

const instruments: Readonly<Record<Instrument, string>> = {
  refractometer: "refractometer",
  "hydrometer 60 F": "hydrometer marked for 60 °F",
  "hydrometer 68 F": "hydrometer marked for 68 °F",
};

const calibrationOf = (instrument: Instrument): Celsius =>
  as<Celsius>(instrument === "hydrometer 60 F" ? 140 / 9 : 20);

/** Formula text for a refractometer reading brought to 68 °F. */
function corrected(reading: string, fahrenheit: string): string {
  const b = `(${reading}/100)`;
  const d = `(${celsius(fahrenheit)}-20)`;
  const { linear, square } = refractometerCorrection;
  return `(${reading}+${d}*(${horner(linear, b)}+${d}*${horner(square, b)}))`;
}

const correctionWords = (correction: number): string =>
  `${correction < 0 ? "−" : "+"} ${figure(Math.abs(correction), 3)}`;
