import { type KgPerLitre, as } from "../measures/quantity";
import { fromHouse, LITRES_PER_GALLON, unitNamed } from "../measures/units";
import { costTerms as terms } from "../terms/cost";
import { syrupTerms } from "../terms/syrup";
import { optional } from "../terms/term";
import {
  landedPrice,
  usablePrice,
  usableWeight,
} from "../trade/costing/landed";
import { syrupCost, syrupPerBottle } from "../trade/costing/syrup-per-bottle";
import { densityInAir } from "../trade/syrup/density";
import { inPounds, perKilogram, perPound } from "./by-weight";
import { defineFunction, type Values } from "./define";
import { nativeSyrupCost, nativeSyrupPerBottle } from "./native/cost";
import { dollars, figure, percent } from "./wording";

const filled = {
  volume: terms.volumeFilled,
  brix: syrupTerms.brix,
  loss: optional(syrupTerms.lossShare, 0),
} as const;
type Filled = Values<typeof filled>;

const drawn = ({ volume, brix, loss }: Filled) =>
  syrupPerBottle(volume, densityInAir(brix), loss);

const perGallon = (density: KgPerLitre): number =>
  inPounds(as(density * LITRES_PER_GALLON));

function drawnWords({ volume, brix, loss }: Filled): string {
  const density = densityInAir(brix);
  const inside = syrupPerBottle(volume, density);
  const words = `${figure(volume * 1000)} mL at 68 °F × ${figure(perGallon(density))} lb/gal = ${figure(inPounds(inside))} lb`;
  return loss === 0
    ? words
    : `${words}; ÷ (1 − ${percent(loss)}) = ${figure(inPounds(syrupPerBottle(volume, density, loss)))} lb`;
}

const densityBasis = ["icumsaDensity", "airBuoyancy", "usCustomary"] as const;

export const costSyrupFunctions = [
  defineFunction({
    name: "SYRUP_PER_BOTTLE",
    family: "Cost",
    summary:
      "Weight of syrup drawn for one bottle, with what is lost on the way.",
    question: "How many pounds of syrup does a bottle take?",
    args: { ...filled, unit: optional(terms.weightUnit, "lb") },
    gives: { about: "syrup drawn per bottle", unit: "lb" },
    basis: densityBasis,
    uncertainty: "±0.02 % of the weight, as the density at 68 °F.",
    examples: [
      {
        args: [252, 66],
        gives: 0.73426,
        within: 0.00001,
        source: "hand arithmetic: 252 ÷ 3,785.41 × 11.0297 lb/gal",
      },
      {
        args: ["252 mL", 66, "2 %", "g"],
        gives: 339.85,
        within: 0.01,
        source:
          "hand arithmetic: 252 ÷ 3,785.41 × 11.0297 ÷ 0.98 × 453.592 g/lb",
      },
    ],
    native: nativeSyrupPerBottle,
    compute: (values) => fromHouse(drawn(values), unitNamed(values.unit)),
    why: (values, answer) =>
      values.unit === "lb"
        ? drawnWords(values)
        : `${drawnWords(values)}, which is ${figure(answer)} ${values.unit}`,
  }),
  defineFunction({
    name: "SYRUP_COST",
    family: "Cost",
    summary: "Money for the syrup in one bottle, with what is lost on the way.",
    question: "What does the syrup in a bottle cost at this bulk price?",
    args: {
      volume: filled.volume,
      brix: filled.brix,
      price: terms.pricePerPound,
      loss: filled.loss,
    },
    gives: { about: "syrup cost per bottle", unit: "money each" },
    basis: densityBasis,
    uncertainty: "±0.02 % of the cost, as the density at 68 °F.",
    examples: [
      {
        args: [252, 66, 2.6],
        gives: 1.90908,
        within: 0.00002,
        source: "hand arithmetic: 0.73426 lb × 2.60",
      },
      {
        args: [252, 66, "$2.60", 0.02],
        gives: 1.94804,
        within: 0.00002,
        source: "hand arithmetic: 0.73426 lb ÷ 0.98 × 2.60",
      },
    ],
    native: nativeSyrupCost,
    compute: (values) => syrupCost(drawn(values), perKilogram(values.price)),
    why: (values, answer) =>
      `${drawnWords(values)}; × ${dollars(values.price)} a lb = ${dollars(answer)} a bottle`,
  }),
  defineFunction({
    name: "LANDED_PRICE",
    family: "Cost",
    summary:
      "Price per pound of a lot with its freight and tests; deposits stay out.",
    question: "What did this lot cost me a pound, delivered?",
    args: {
      net: terms.netWeight,
      syrup_cost: terms.syrupAmount,
      freight: optional(terms.freight, 0),
      tests: optional(terms.tests, 0),
    },
    gives: { about: "landed price", unit: "money per lb" },
    basis: ["arithmetic"],
    notes: ["A deposit that comes back is no cost: leave it out."],
    examples: [
      {
        args: [10251, 24192.36, 165],
        gives: 24357.36 / 10251,
        source:
          "worked example, arithmetic: 24,357.36 ÷ 10,251 lb = 2.3761 a lb",
      },
      {
        args: ["1000 lb", 2400, 60, 40],
        gives: 2.5,
        source: "hand arithmetic: 2,500 ÷ 1,000",
      },
    ],
    native: ({ net, syrup_cost, freight, tests }) =>
      `((${syrup_cost}+${freight}+${tests})/${net})`,
    compute: ({ net, syrup_cost, freight, tests }) =>
      perPound(landedPrice({ net, syrup: syrup_cost, freight, tests })),
    why: ({ net, syrup_cost, freight, tests }, answer) =>
      `(${dollars(syrup_cost)} syrup + ${dollars(freight)} freight + ${dollars(tests)} tests) ÷ ${figure(inPounds(net), 8)} lb = ${dollars(answer)} a lb${freight === 0 ? ", before freight: none was given" : ""}`,
  }),
  defineFunction({
    name: "USABLE_PRICE",
    family: "Cost",
    summary:
      "Price per pound that can be packed, after filter loss and drum heels.",
    question: "What does a pound that reaches the kettle cost me?",
    args: {
      landed: terms.pricePerPound,
      net: terms.netWeight,
      filter_loss: optional(terms.filterLoss, 0),
      heel: optional(terms.heel, 0),
    },
    gives: { about: "price per usable pound", unit: "money per lb" },
    basis: ["arithmetic"],
    examples: [
      {
        args: [2.3761, 10251, 0.015, 14.4],
        gives: 2.4157,
        within: 0.00005,
        source:
          "worked example, arithmetic: 10,251 × 0.985 − 14.4 = 10,082.8 lb usable",
      },
      {
        args: [2.4, 1000, "5 %", 150],
        gives: 3,
        source: "hand arithmetic: 2,400 ÷ (950 − 150)",
      },
    ],
    native: ({ landed, net, filter_loss, heel }) =>
      `(${landed}*${net}/(${net}*(1-${filter_loss})-${heel}))`,
    compute: ({ landed, net, filter_loss, heel }) =>
      perPound(
        usablePrice(perKilogram(landed), {
          net,
          filterLoss: filter_loss,
          heel,
        }),
      ),
    why: ({ landed, net, filter_loss, heel }, answer) => {
      const usable = usableWeight({ net, filterLoss: filter_loss, heel });
      return `${figure(inPounds(net), 8)} lb × (1 − ${percent(filter_loss)}) − ${figure(inPounds(heel))} lb = ${figure(inPounds(usable), 8)} lb usable; ${dollars(landed)} × ${figure(inPounds(net), 8)} ÷ ${figure(inPounds(usable), 8)} = ${dollars(answer)} a usable lb`;
    },
  }),
];
