import { unusable } from "../measures/cannot-answer";
import { allocate } from "../measures/money";
import { barrelTerms } from "../terms/barrels";
import { materialTerms } from "../terms/materials";
import { optional } from "../terms/term";
import { agedParts, agedPrice, type Aging } from "../trade/costing/aged";
import { inPounds, perPound } from "./by-weight";
import { defineFunction, type Values } from "./define";
import { dollars, figure } from "./wording";

const agingArgs = {
  cost_in: barrelTerms.costIn,
  weight_out: barrelTerms.weightOut,
  barrel_price: barrelTerms.barrelPrice,
  fills: barrelTerms.fills,
  months: barrelTerms.months,
  storage: optional(barrelTerms.storage, 0),
  money_rate: optional(barrelTerms.moneyRate, 0),
  resale: optional(barrelTerms.resale, 0),
} as const;

const agingOf = (values: Values<typeof agingArgs>): Aging => ({
  syrup: values.cost_in,
  out: values.weight_out,
  barrel: values.barrel_price,
  resale: values.resale,
  fills: values.fills,
  months: values.months,
  storagePerMonth: values.storage,
  moneyRatePerYear: values.money_rate,
});

/** A share with a blank driver would move all shares below it up by one, so it is refused. */
const complete = (
  drivers: readonly (number | undefined)[],
): readonly number[] =>
  drivers.map((driver, i) => {
    if (driver === undefined) throw unusable(`drivers: item ${i + 1} is blank`);
    return driver;
  });

export const costShareFunctions = [
  defineFunction({
    name: "ALLOCATE",
    family: "Cost",
    summary: "Splits a bill by drivers so that the parts add up to the cent.",
    question:
      "How do I share this bill so that nothing is lost or charged twice?",
    args: { total: materialTerms.total, drivers: materialTerms.drivers },
    gives: { about: "the shares", unit: "money", spills: ["Share"] },
    basis: ["arithmetic"],
    notes: [
      "Each share is rounded down to the cent and the cents left go to the largest remainders, the first of equals.",
    ],
    examples: [
      {
        args: [100, [[1], [1], [1]]],
        gives: [[33.34], [33.33], [33.33]],
        source: "hand arithmetic: three times 33.33 leaves one cent",
      },
      {
        args: [10600, [[13], [18]]],
        gives: [[4445.16], [6154.84]],
        source:
          "hand arithmetic: 10,600 × 13 ÷ 31 = 4,445.161, × 18 ÷ 31 = 6,154.839",
      },
    ],
    noNative:
      "the answer fills as many cells as there are drivers, and the last cents go to the largest remainders in turn; one plain formula from before 2019 cannot do that",
    compute: ({ total, drivers }) =>
      allocate(total, complete(drivers)).map((part) => [part]),
    why: ({ total, drivers }, answer) => {
      const sum = complete(drivers).reduce((a, b) => a + b, 0);
      const first = Array.isArray(answer) ? answer.flat()[0] : answer;
      return `${dollars(total)} by ${drivers.map((d) => figure(d ?? 0)).join(" : ")}; the first is ${dollars(total)} × ${figure(drivers[0] ?? 0)} ÷ ${figure(sum)}, in whole cents ${dollars(Number(first))}, and the parts add up to the total`;
    },
  }),
  defineFunction({
    name: "AGED_PRICE",
    family: "Cost",
    summary: "Price per pound of oak-aged syrup that comes out of the barrel.",
    question: "What does aged syrup cost me a pound?",
    args: agingArgs,
    gives: { about: "price per pound out", unit: "money per lb" },
    basis: ["arithmetic", "commonPractice"],
    notes: [
      "The barrel, less what it is sold for, is shared by its fills. Storage is a month; the cost of money is simple interest on the syrup.",
    ],
    examples: [
      {
        args: [1430, 500, 165, 2, 8, 5, 0.09, 45],
        gives: 3.2316,
        source:
          "hand arithmetic: 1,430 + 120 ÷ 2 + 8 × 5 + 1,430 × 9 % × 8 ÷ 12 = 1,615.80; ÷ 500",
      },
      {
        args: [1000, "400 lb", 200, 1, 12],
        gives: 3,
        source: "hand arithmetic: (1,000 + 200) ÷ 400",
      },
    ],
    native: ({
      cost_in,
      weight_out,
      barrel_price,
      fills,
      months,
      storage,
      money_rate,
      resale,
    }) =>
      `IF(${resale}>${barrel_price},VALUE("resale is above the barrel's price"),(${cost_in}*(1+${money_rate}*${months}/12)+(${barrel_price}-${resale})/${fills}+${storage}*${months})/${weight_out})`,
    compute: (values) => perPound(agedPrice(agingOf(values))),
    why: (values, answer) => {
      const { syrup, barrel, storage, money } = agedParts(agingOf(values));
      return `(${dollars(syrup)} syrup + ${dollars(barrel)} barrel + ${dollars(storage)} storage + ${dollars(money)} money) ÷ ${figure(inPounds(values.weight_out))} lb out = ${dollars(answer)} a lb`;
    },
  }),
];
