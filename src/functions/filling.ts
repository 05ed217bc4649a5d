import { fillingTerms as terms } from "../terms/filling";
import { syrupTerms } from "../terms/syrup";
import { coldVolume, hotVolume, shrinkage } from "../trade/filling/hot-volume";
import { scalds } from "./caution";
import { defineFunction } from "./define";
import {
  densities,
  glassNote,
  hotFillBasis,
  hotFillUncertainty,
  millilitres,
} from "./filling-words";
import { nativeColdDensity, nativeDensity } from "./native/density";
import { fahrenheit, figure, percent } from "./wording";

const golden =
  "1328.19 ÷ 1289.73 = 1.02982, the model's densities at 68 °F and 185 °F; not a published table value";

export const fillingFunctions = [
  defineFunction({
    name: "HOT_VOLUME",
    family: "Filling",
    summary: "The volume to fill hot so that it measures right at 68 °F.",
    question: "How much must I fill hot?",
    args: {
      volume: terms.coldVolume,
      brix: syrupTerms.brix,
      fill_temperature: terms.fillTemperature,
    },
    gives: { about: "volume at filling temperature", unit: "mL" },
    basis: hotFillBasis,
    uncertainty: hotFillUncertainty,
    caution: scalds,
    notes: [glassNote],
    examples: [
      { args: [250, 66.9, 185], gives: 257.455, within: 0.005, source: golden },
      {
        args: ["12 fl oz", 66, "85 °C"],
        gives: 365.49,
        within: 0.005,
        source: "354.882 mL × 1.02990, the model's ratio at 66.0 °Bx, by hand",
      },
    ],
    native: ({ volume, brix, fill_temperature }) =>
      `((${volume})*${nativeColdDensity(brix)}/${nativeDensity(brix, fill_temperature)})`,
    compute: ({ volume, brix, fill_temperature }) =>
      hotVolume(volume, brix, fill_temperature) * 1000,
    why: ({ volume, brix, fill_temperature }, answer) =>
      `${millilitres(volume)} × ${densities(brix, fill_temperature)} = ${figure(answer)} mL at ${fahrenheit(fill_temperature)}`,
  }),
  defineFunction({
    name: "COLD_VOLUME",
    family: "Filling",
    summary: "What a hot volume measures once it has cooled to 68 °F.",
    question: "How much will a hot fill measure when it is cold?",
    args: {
      volume: terms.hotVolume,
      brix: syrupTerms.brix,
      fill_temperature: terms.fillTemperature,
    },
    gives: { about: "volume at 68 °F", unit: "mL" },
    basis: hotFillBasis,
    uncertainty: hotFillUncertainty,
    caution: scalds,
    notes: [glassNote],
    examples: [
      { args: [257.455, 66.9, 185], gives: 250, within: 0.005, source: golden },
      {
        args: ["120 gal", 66.9, 185],
        gives: 441_096,
        within: 5,
        source: "454,249.4 mL ÷ 1.02982 by hand",
      },
    ],
    native: ({ volume, brix, fill_temperature }) =>
      `((${volume})*${nativeDensity(brix, fill_temperature)}/${nativeColdDensity(brix)})`,
    compute: ({ volume, brix, fill_temperature }) =>
      coldVolume(volume, brix, fill_temperature) * 1000,
    why: ({ volume, brix, fill_temperature }, answer) =>
      `${millilitres(volume)} at ${fahrenheit(fill_temperature)} ÷ ${densities(brix, fill_temperature)} = ${figure(answer)} mL at 68 °F`,
  }),
  defineFunction({
    name: "SHRINKAGE",
    family: "Filling",
    summary:
      "The share of its hot volume that syrup loses on cooling to 68 °F.",
    question: "How much does syrup shrink as it cools?",
    args: { brix: syrupTerms.brix, fill_temperature: terms.fillTemperature },
    gives: { about: "share of the hot volume", unit: "share" },
    basis: hotFillBasis,
    uncertainty: "±0.001 (a tenth of a per cent of the volume).",
    caution: scalds,
    examples: [
      {
        args: [66.9, 185],
        gives: 0.02896,
        within: 0.00001,
        source: "1 − 1 ÷ 1.02982, the model's ratio, by hand",
      },
      {
        args: [66.9, 200],
        gives: 0.0331,
        within: 0.00005,
        source: "1 − 1 ÷ 1.03423, the model's ratio, by hand",
      },
    ],
    native: ({ brix, fill_temperature }) =>
      `(1-${nativeDensity(brix, fill_temperature)}/${nativeColdDensity(brix)})`,
    compute: ({ brix, fill_temperature }) => shrinkage(brix, fill_temperature),
    why: ({ brix, fill_temperature }, answer) =>
      `1 − 1 ÷ ${densities(brix, fill_temperature)} = ${percent(Number(answer))} of the hot volume`,
  }),
];
