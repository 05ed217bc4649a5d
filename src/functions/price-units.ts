import { as, type MoneyPerLitre } from "../measures/quantity";
import { fromHouse, LITRES_PER_GALLON, unitNamed } from "../measures/units";
import { costTerms } from "../terms/cost";
import { priceTerms as terms } from "../terms/price";
import { syrupTerms } from "../terms/syrup";
import { optional } from "../terms/term";
import { breakEvenUnits } from "../trade/pricing/break-even";
import { priceByVolume, priceByWeight } from "../trade/pricing/per-gallon";
import { densityInAir, poundsPerGallon } from "../trade/syrup/density";
import { perKilogram, perPound } from "./by-weight";
import { defineFunction } from "./define";
import { nativePoundsPerGallon } from "./native/density";
import { wholeUp } from "./native/lines";
import { dollars, figure } from "./wording";

const densityBasis = ["icumsaDensity", "airBuoyancy", "usCustomary"] as const;

export const priceUnitFunctions = [
  defineFunction({
    name: "BREAK_EVEN_UNITS",
    family: "Price",
    summary: "Units that earn back money spent once, rounded up.",
    question: "How many must I sell before the artwork is paid for?",
    args: {
      one_time: terms.oneTime,
      price: terms.price,
      unit_cost: terms.cost,
    },
    gives: { about: "units to sell", unit: "units" },
    basis: ["arithmetic"],
    notes: ["Use the direct cost of a unit, without shared overheads."],
    examples: [
      {
        args: [1850, 7.2, 4.7],
        gives: 740,
        source: "hand arithmetic: 1,850 ÷ 2.50 = 740",
      },
      {
        args: [1000, 10, 7],
        gives: 334,
        source: "hand arithmetic: 1,000 ÷ 3 = 333.3, rounded up",
      },
    ],
    native: ({ one_time, price, unit_cost }) =>
      `IF(${price}>${unit_cost},${wholeUp(`${one_time}/(${price}-${unit_cost})`)},NA())`,
    compute: ({ one_time, price, unit_cost }) =>
      breakEvenUnits(one_time, price, unit_cost),
    why: ({ one_time, price, unit_cost }, answer) =>
      `${dollars(one_time)} ÷ (${dollars(price)} − ${dollars(unit_cost)}), rounded up = ${figure(answer, 8)} units`,
  }),
  defineFunction({
    name: "PRICE_PER_GALLON",
    family: "Price",
    summary: "Price of syrup by the US gallon from its price by the pound.",
    question: "What is that price a gallon?",
    args: { price: costTerms.pricePerPound, brix: syrupTerms.brix },
    gives: { about: "price per gallon at 68 °F", unit: "money per gal" },
    basis: densityBasis,
    uncertainty: "±0.02 % of the price, as the density at 68 °F.",
    examples: [
      {
        args: [2.6, 66],
        gives: 28.677,
        within: 0.001,
        source: "hand arithmetic: 2.60 × 11.0297 lb/gal",
      },
      {
        args: [2.55, 66.9],
        gives: 28.2435,
        within: 0.0005,
        source: "hand arithmetic: 2.55 × 11.0759 lb/gal",
      },
    ],
    native: ({ price, brix }) =>
      `(${price}*${nativePoundsPerGallon(brix, "68")})`,
    compute: ({ price, brix }) =>
      priceByVolume(perKilogram(price), densityInAir(brix)) * LITRES_PER_GALLON,
    why: ({ price, brix }, answer) =>
      `${dollars(price)} a lb × ${figure(poundsPerGallon(brix), 6)} lb/gal = ${dollars(answer)} a gallon`,
  }),
  defineFunction({
    name: "PRICE_PER_POUND",
    family: "Price",
    summary: "Price of syrup by the pound from its price by the US gallon.",
    question: "What is that price a pound?",
    args: { price: terms.pricePerGallon, brix: syrupTerms.brix },
    gives: { about: "price per pound", unit: "money per lb" },
    basis: densityBasis,
    uncertainty: "±0.02 % of the price, as the density at 68 °F.",
    examples: [
      {
        args: [34.1, 66],
        gives: 3.0917,
        within: 0.0001,
        source: "hand arithmetic: 34.10 ÷ 11.0297 lb/gal",
      },
      {
        args: [28.2435, 66.9],
        gives: 2.55,
        within: 0.00005,
        source: "hand arithmetic: 28.2435 ÷ 11.0759 lb/gal",
      },
    ],
    native: ({ price, brix }) =>
      `(${price}/${nativePoundsPerGallon(brix, "68")})`,
    compute: ({ price, brix }) =>
      perPound(
        priceByWeight(
          as<MoneyPerLitre>(price / LITRES_PER_GALLON),
          densityInAir(brix),
        ),
      ),
    why: ({ price, brix }, answer) =>
      `${dollars(price)} a gallon ÷ ${figure(poundsPerGallon(brix), 6)} lb/gal = ${dollars(answer)} a lb`,
  }),
  defineFunction({
    name: "UNIT_PRICE",
    family: "Price",
    summary: "Price for one unit of volume, to compare sizes.",
    question: "Which size is dearer by the ounce?",
    args: {
      price: terms.price,
      volume: terms.volumeSold,
      unit: optional(terms.volumeUnit, "fl oz"),
    },
    gives: { about: "price per unit", unit: "money per fl oz" },
    basis: ["usCustomary"],
    uncertainty: "Exact: the units are definitions.",
    examples: [
      {
        args: [12.8, "16 fl oz"],
        gives: 0.8,
        source: "hand arithmetic: 12.80 ÷ 16",
      },
      {
        args: [9.95, 250, "L"],
        gives: 39.8,
        source: "hand arithmetic: 9.95 ÷ 0.25",
      },
    ],
    native: ({ price, volume, unit }) =>
      `(${price}/${volume}*IF(${unit}="fl oz",3785.411784/128,IF(${unit}="pt",3785.411784/8,IF(${unit}="qt",3785.411784/4,IF(${unit}="gal",3785.411784,IF(${unit}="L",1000,1))))))`,
    compute: ({ price, volume, unit }) =>
      price / fromHouse(volume, unitNamed(unit)),
    why: ({ price, volume, unit }, answer) =>
      `${dollars(price)} ÷ ${figure(fromHouse(volume, unitNamed(unit)))} ${unit} = ${dollars(answer)} per ${unit}`,
  }),
];
