import { fillingTerms as terms } from "../terms/filling";
import { syrupTerms } from "../terms/syrup";
import { optional } from "../terms/term";
import { type Kettle, kettleYield } from "../trade/filling/kettle";
import { poundsPerGallon } from "../trade/syrup/density";
import { scalds } from "./caution";
import { defineFunction, type Values } from "./define";
import { densities, gallons, hotFillBasis, millilitres } from "./filling-words";
import {
  nativeColdDensity,
  nativeDensity,
  nativeInAir,
} from "./native/density";
import { toUnit } from "./native/units";
import { figure, percent } from "./wording";

const kettleArgs = {
  hot_volume: terms.kettleVolume,
  brix: syrupTerms.brix,
  fill_temperature: terms.fillTemperature,
  bottle: terms.bottle,
  left_behind: optional(terms.leftBehind, 0),
  purge: optional(terms.purge, 0),
  breakage: optional(terms.breakage, 0),
} as const;

export const fillingKettleFunctions = [
  defineFunction({
    name: "KETTLE_BOTTLES",
    family: "Filling",
    summary: "Whole good bottles that one kettle of hot syrup fills.",
    question: "How many bottles does a kettle give?",
    args: kettleArgs,
    gives: { about: "good bottles", unit: "bottles" },
    basis: [...hotFillBasis, "airBuoyancy", "usCustomary"],
    uncertainty: "±0.1 % of the volume, so one bottle in a thousand.",
    caution: scalds,
    examples: [
      {
        args: [120, 66.9, 185, 252],
        gives: 1750,
        source: "120 × 3,785.41 ÷ 1.02982 ÷ 252 = 1,750.4, by hand",
      },
      {
        args: [120, 66.9, 185, 252, 6, 11, "1 %"],
        gives: 1631,
        source:
          "(114 ÷ 1.02982 − 11 ÷ 11.0759) × 3,785.41 ÷ 252 × 0.99 = 1,631.5, by hand",
      },
    ],
    native: (a) => {
      const hot = nativeDensity(a.brix, a.fill_temperature);
      const cold = nativeColdDensity(a.brix);
      const drawn = `(${a.hot_volume}-${a.left_behind})${toUnit("gal")}*${hot}/${cold}`;
      const purged = `${a.purge}${toUnit("lb")}/${nativeInAir(cold)}*1000`;
      const bottles = `INT((${drawn}-${purged})/${a.bottle}*1000*(1-${a.breakage})+0.000000001)`;
      return `IF(${drawn}>${purged},${bottles},NA())`;
    },
    compute: (given) => kettleYield(kettle(given)).bottles,
    why: (given, answer) => {
      const { drawn, purged } = kettleYield(kettle(given));
      return `(${gallons(given.hot_volume)} − ${gallons(given.left_behind)} left behind) ÷ ${densities(given.brix, given.fill_temperature)} = ${gallons(drawn)} at 68 °F; less ${gallons(purged)} of purge (${figure(poundsPerGallon(given.brix))} lb/gal); ÷ ${millilitres(given.bottle)}; × (1 − ${percent(given.breakage)} breakage); rounded down to ${figure(answer, 9)} bottles`;
    },
  }),
];

const kettle = (given: Values<typeof kettleArgs>): Kettle => ({
  hotVolume: given.hot_volume,
  brix: given.brix,
  fill: given.fill_temperature,
  leftBehind: given.left_behind,
  purge: given.purge,
  bottle: given.bottle,
  breakage: given.breakage,
});
