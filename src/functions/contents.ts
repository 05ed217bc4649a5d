import { fromHouse, unitNamed } from "../measures/units";
import { contentsTerms as terms } from "../terms/contents";
import { syrupTerms } from "../terms/syrup";
import { optional } from "../terms/term";
import { declaredVolume } from "../trade/contents/declared-volume";
import { netVolume } from "../trade/contents/net-volume";
import { typeHeight } from "../trade/contents/type-height";
import { densityInAir } from "../trade/syrup/density";
import { defineFunction } from "./define";
import { nativeNetVolume, nativeTypeHeight } from "./native/contents";
import { entered, fahrenheit, figure } from "./wording";

const grams = (kilograms: number): string => `${entered(kilograms * 1000)} g`;

export const contentsFunctions = [
  defineFunction({
    name: "NET_VOLUME",
    family: "Net contents",
    summary: "What a bottle holds at 68 °F, from its weights full and empty.",
    question: "How much is really in this bottle?",
    args: {
      gross: terms.gross,
      tare: terms.tare,
      brix: syrupTerms.brix,
      temperature: optional(syrupTerms.temperature, 68),
    },
    gives: { about: "volume at 68 °F", unit: "mL" },
    basis: ["icumsaDensity", "bettinSpieweck", "airBuoyancy"],
    uncertainty:
      "±0.02 % from the density, 0.2 mL for a gram on the scale, and 0.13 % for every 0.3 °Bx the Brix is out.",
    notes: [
      "Weigh the same bottle full and empty: empty bottles of one delivery may differ by 6 g, which is 4.5 mL (common practice, no source).",
      "The weights are as a scale in air shows them.",
      "The temperature is that of the syrup on the scale. It hardly matters, because weight does not shrink: the answer is always the volume at 68 °F.",
    ],
    examples: [
      {
        args: [579.8, 248.3, 66.9],
        gives: 249.777,
        within: 0.005,
        source:
          "331.5 g ÷ 1.32718 g/mL in air, (1328.19 − 1.2) ÷ (1 − 1.2/8400) by hand from the model's density",
      },
      {
        args: ["20.5 oz", "8.75 oz", 66, "120 °F"],
        gives: 252.035,
        within: 0.02,
        source:
          "333.108 g ÷ 1.32165 g/mL in air, by hand from the model's density at 68 °F; air bears warm syrup up a hair more",
      },
    ],
    native: nativeNetVolume,
    compute: (bottle) => netVolume(bottle) * 1000,
    why: ({ gross, tare, brix, temperature }, answer) =>
      `${grams(gross)} − ${grams(tare)} = ${grams(gross - tare)}${temperature === 20 ? "" : `, weighed at ${fahrenheit(temperature)}`}; ÷ ${figure(densityInAir(brix), 6)} g/mL in air at 68 °F = ${figure(answer)} mL`,
  }),
  defineFunction({
    name: "DECLARED_VOLUME",
    family: "Net contents",
    summary: "The volume a label declares: the larger of its two statements.",
    question: "What volume does this label bind me to?",
    args: {
      label: terms.label,
      unit: optional(syrupTerms.volumeUnit, "mL"),
    },
    gives: { about: "declared volume", unit: "mL" },
    basis: ["largerDeclaration", "usCustomary"],
    notes: [
      "Statements are parted by brackets, a stroke or a dash, or are in customary and metric units beside each other.",
      "One amount in two units of a kind counts as one statement: 1 qt 8 fl oz is 40 fl oz.",
    ],
    examples: [
      {
        args: ["12 fl oz (355 mL)"],
        gives: 355,
        source: "12 × 29.5735 = 354.882 mL by hand; the metric one is larger",
      },
      {
        args: ["16 fl oz (473 mL)"],
        gives: 473.176,
        within: 0.001,
        source:
          "16 × 29.5735295625 mL by hand; the customary one is larger by 0.176 mL",
      },
      {
        args: ["NET 1 gal (3.78 L)", "L"],
        gives: 3.78541,
        within: 0.000005,
        source: "1 US gallon is 3.785411784 L by definition",
      },
    ],
    noNative:
      "a label is taken apart statement by statement, which no plain formula of a sensible length does",
    compute: ({ label, unit }) =>
      fromHouse(declaredVolume(label).larger.volume, unitNamed(unit)),
    why: ({ label, unit }, answer) => {
      const { statements, larger } = declaredVolume(label);
      const said = statements.map(
        ({ text, volume }) => `${text} = ${figure(volume * 1000, 7)} mL`,
      );
      const answered = `${figure(answer, 7)} ${unit}`;
      return statements.length > 1
        ? `${said.join(", ")}; the larger, ${larger.text}, binds: ${answered}`
        : `${said.join()}, the only statement: ${answered}`;
    },
  }),
];

const fractions: Readonly<Record<number, string>> = {
  0.0625: "1/16",
  0.125: "1/8",
  0.1875: "3/16",
  0.25: "1/4",
  0.5: "1/2",
};

export const contentsLabelFunctions = [
  defineFunction({
    name: "TYPE_HEIGHT",
    family: "Net contents",
    summary: "Least height of the type that declares the contents on a label.",
    question: "How large must the type of the net contents be?",
    args: { panel_area: terms.panelArea },
    gives: { about: "least height of the type", unit: "inches" },
    basis: ["typeHeight", "typeHeightAbove"],
    notes: [
      "The panel leaves out shoulder, neck, top and bottom. Its area is height × width of a flat side, and 40 % of height × girth of a round bottle.",
      "The height is that of a lower-case o, or of the capitals where all are capitals.",
      "Steps above 25 in² are from memory; so is 1/16 inch more for type moulded into the glass.",
      "This is a US rule; other countries have their own.",
    ],
    examples: [
      {
        args: [4.78],
        gives: 0.0625,
        source:
          "21 CFR 102.28 as read: 1/16 inch to 5 in²; the panel of a bottle 2 in wide and 1.9 in high",
      },
      {
        args: [6.5],
        gives: 0.125,
        source: "16 CFR 500.21 as read: 1/8 inch from 5 to 25 in²",
      },
      {
        args: [35],
        gives: 0.1875,
        source: "21 CFR 101.7 from memory: 3/16 inch from 25 to 100 in²",
      },
    ],
    native: nativeTypeHeight,
    compute: ({ panel_area }) => typeHeight(panel_area).height,
    why: ({ panel_area }) => {
      const { height, over, upTo } = typeHeight(panel_area);
      const span = upTo === Infinity ? "" : ` and at most ${upTo}`;
      return `a panel of ${entered(panel_area)} in² is more than ${over}${span} in²: ${fractions[height] ?? height} inch, ${height}`;
    },
  }),
];
