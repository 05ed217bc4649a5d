import { fillingTerms as terms } from "../terms/filling";
import { syrupTerms } from "../terms/syrup";
import { hotVolume } from "../trade/filling/hot-volume";
import { headspace, levelDrop } from "../trade/filling/level";
import { scalds } from "./caution";
import { defineFunction } from "./define";
import {
  densities,
  glassNote,
  hotFillBasis,
  millilitres,
} from "./filling-words";
import { nativeColdDensity, nativeDensity } from "./native/density";
import { entered, fahrenheit, figure } from "./wording";

export const fillingLevelFunctions = [
  defineFunction({
    name: "LEVEL_DROP",
    family: "Filling",
    summary: "How far the level falls in a straight neck as the fill cools.",
    question: "How far will the level drop in the neck?",
    args: {
      volume: terms.coldVolume,
      brix: syrupTerms.brix,
      fill_temperature: terms.fillTemperature,
      neck_bore: terms.neckBore,
    },
    gives: { about: "drop of the level", unit: "mm" },
    basis: hotFillBasis,
    uncertainty: "±1 mm for 250 mL in a 22 mm neck, most of it the glass.",
    caution: scalds,
    notes: [
      glassNote,
      "A drop deeper than the neck ends in the shoulder, where it is smaller than this.",
    ],
    examples: [
      {
        args: [250, 66.9, 185, 22],
        gives: 19.61,
        within: 0.01,
        source: "7.455 mL ÷ (π × 2.2² ÷ 4 = 3.8013 cm²) by hand",
      },
      {
        args: ["12 fl oz", 66, "85 °C", "1 in"],
        gives: 20.94,
        within: 0.01,
        source: "354.882 mL × 0.02990 ÷ (π × 2.54² ÷ 4 = 5.0671 cm²) by hand",
      },
    ],
    native: ({ volume, brix, fill_temperature, neck_bore }) =>
      `(${volume}*(${nativeColdDensity(brix)}/${nativeDensity(brix, fill_temperature)}-1)*1000/(PI()*${neck_bore}*${neck_bore}/4))`,
    compute: ({ volume, brix, fill_temperature, neck_bore }) =>
      levelDrop(volume, brix, fill_temperature, neck_bore),
    why: ({ volume, brix, fill_temperature, neck_bore }, answer) =>
      `${millilitres(hotVolume(volume, brix, fill_temperature))} at ${fahrenheit(fill_temperature)} − ${millilitres(volume)} at 68 °F = ${millilitres(hotVolume(volume, brix, fill_temperature) - volume)}, in a neck of ${entered(neck_bore)} mm bore (${figure((Math.PI * neck_bore ** 2) / 400, 4)} cm²) a drop of ${figure(answer, 3)} mm`,
  }),
  defineFunction({
    name: "HEADSPACE",
    family: "Filling",
    summary: "Room left in the container above the hot fill.",
    question: "Does the hot fill fit, and how much room is left?",
    args: {
      brimful: terms.brimful,
      volume: terms.coldVolume,
      brix: syrupTerms.brix,
      fill_temperature: terms.fillTemperature,
    },
    gives: { about: "room left at filling", unit: "mL" },
    basis: hotFillBasis,
    uncertainty: "±0.1 % of the hot volume, and the spread of the glass.",
    caution: scalds,
    notes: [glassNote],
    examples: [
      {
        args: [270, 250, 66.9, 185],
        gives: 12.545,
        within: 0.005,
        source: "270 − 250 × 1.02982 by hand from the model's ratio",
      },
      {
        args: ["375 mL", "12 fl oz", 66, "85 °C"],
        gives: 9.51,
        within: 0.005,
        source: "375 − 354.882 × 1.02990 by hand from the model's ratio",
      },
    ],
    native: ({ brimful, volume, brix, fill_temperature }) => {
      const hot = `${volume}*${nativeColdDensity(brix)}/${nativeDensity(brix, fill_temperature)}`;
      return `IF(${brimful}>=${hot},${brimful}-${hot},NA())`;
    },
    compute: ({ brimful, volume, brix, fill_temperature }) =>
      headspace(brimful, volume, brix, fill_temperature) * 1000,
    why: ({ brimful, volume, brix, fill_temperature }, answer) =>
      `${millilitres(brimful)} to the brim − ${millilitres(hotVolume(volume, brix, fill_temperature))} hot (${millilitres(volume)} at 68 °F × ${densities(brix, fill_temperature)}) = ${figure(answer)} mL`,
  }),
];
