import { withoutNoise } from "../measures/exact";
import { roundHalfUp } from "../measures/money";
import type { Kilograms } from "../measures/quantity";
import { optional } from "../terms/term";
import { toteTerms as terms } from "../terms/totes";
import { poundsPerGallon } from "../trade/syrup/density";
import { contractLeft, massBalance } from "../trade/totes/balance";
import { toteNet } from "../trade/totes/net";
import { BASE_BRIX, saleAmount } from "../trade/totes/sale-amount";
import { inPounds } from "./by-weight";
import { defineFunction } from "./define";
import {
  nativeContractLeft,
  nativeMassBalance,
  nativeSaleAmount,
  nativeToteNet,
} from "./native/totes";
import { dollars, entered, figure, percent } from "./wording";

const pounds = (weight: Kilograms): number => withoutNoise(inPounds(weight));
const inWords = (weight: Kilograms): string => `${entered(pounds(weight))} lb`;

const sum = (weights: readonly Kilograms[]): Kilograms =>
  weights.reduce((total, weight) => (total + weight) as Kilograms);

export const toteFunctions = [
  defineFunction({
    name: "TOTE_NET",
    family: "Totes and codes",
    summary: "Pounds of syrup in a tote: gross less its own tare.",
    question: "How much syrup is in this tote?",
    args: {
      gross: terms.gross,
      tare: terms.tare,
      plate_limit: optional(terms.plateLimit, undefined),
    },
    gives: { about: "net weight", unit: "lb" },
    basis: ["arithmetic"],
    notes: [
      "Take the tare of that very tote; totes of one size differ by tens of pounds.",
      "The plate limit is the largest gross weight marked on the tote. A tote filled to the brim with syrup can be above it.",
    ],
    caution:
      "A tote above its plate limit may burst or drop. Do not lift or ship it; local transport and workplace rules decide.",
    examples: [
      {
        args: [3044, 132],
        gives: 2912,
        source: "worked example, arithmetic: tote T-001, 3,044 − 132",
      },
      {
        args: ["1,381 kg", "60 kg", "1,500 kg"],
        gives: 2912.3065,
        within: 0.00005,
        source: "hand arithmetic: 1,321 kg ÷ 0.45359237",
      },
    ],
    native: nativeToteNet,
    compute: ({ gross, tare, plate_limit }) =>
      pounds(toteNet(gross, tare, plate_limit)),
    why: ({ gross, tare }, answer) =>
      `${inWords(gross)} gross − ${inWords(tare)} tare = ${entered(Number(answer))} lb net`,
  }),
  defineFunction({
    name: "SALE_AMOUNT",
    family: "Totes and codes",
    summary:
      "Money for a net weight at a price per pound, gallon, pound at 66 °Bx or kilogram.",
    question: "What do I invoice for this tote?",
    args: {
      net: terms.net,
      price: terms.price,
      basis: terms.saleBasis,
      brix: optional(terms.brix, undefined),
    },
    gives: { about: "amount, rounded once", unit: "money" },
    basis: [
      "arithmetic",
      "usCustomary",
      "commonPractice",
      "icumsaDensity",
      "airBuoyancy",
    ],
    uncertainty:
      "Exact by weight; per gallon the density adds ±0.02 % of the amount.",
    notes: [
      "The amount is worked out in exact decimals and rounded once to whole cents, a half up. Gallons are never rounded on the way.",
      'Per gallon needs the Brix: gallons at 68 °F are the weight ÷ lb/gal of that Brix. A contract with a fixed lb/gal of its own is a price "per lb".',
      '"per lb at 66" is a price for a pound of syrup of 66.0 °Bx; syrup of other Brix is paid by its solids: price × Brix ÷ 66. Common practice, no source: agree it in the contract.',
      'A number is pounds. For a ticket in kilograms type the weight as the ticket shows it, "1,320.9 kg"; the pounds of the same tote make another amount where the kilograms were rounded.',
    ],
    examples: [
      {
        args: [2912, 2.92, "per lb"],
        gives: 8503.04,
        source: "worked example, arithmetic: tote T-001, 2,912 × 2.92",
      },
      {
        args: ["1,320.9 kg", 8.95, "per kg"],
        gives: 11822.06,
        source:
          "worked example, arithmetic: 1,320.9 × 8.95 = 11,822.055, a half, rounded up",
      },
      {
        args: [2913, 3.08, "per lb at 66", 65.9],
        gives: 8958.45,
        source:
          "hand arithmetic: 2,913 × 3.08 × 65.9 ÷ 66 = 8,958.446, tote T-021",
      },
      {
        args: [2936, 32.2, "per gal", 66.6],
        gives: 8547.81,
        within: 0.4,
        source:
          "hand arithmetic: 2,936 lb ÷ 11.060 lb/gal × 32.20, tote T-003; half of the last digit of 11.060 is 0.39 of the amount",
      },
    ],
    native: nativeSaleAmount,
    compute: ({ net, price, basis, brix }) =>
      saleAmount(net, price, basis, brix),
    why: ({ net, price, basis, brix }, answer) => {
      const amount = `= ${dollars(answer)}`;
      const money = priceWords(price);
      if (basis === "per kg")
        return `${entered(withoutNoise(net))} kg × ${money} a kg ${amount}`;
      if (basis === "per lb" || brix === undefined)
        return `${inWords(net)} × ${money} a lb ${amount}`;
      return basis === "per gal"
        ? `${inWords(net)} ÷ ${figure(poundsPerGallon(brix), 6)} lb/gal = ${figure(inPounds(net) / poundsPerGallon(brix), 7)} gal × ${money} a gallon ${amount}`
        : `${inWords(net)} × ${money} a lb × ${entered(brix)} ÷ ${BASE_BRIX} °Bx ${amount}`;
    },
  }),
  defineFunction({
    name: "CONTRACT_LEFT",
    family: "Totes and codes",
    summary: "Pounds of a contract still to ship; negative when over.",
    question: "How much is left on this contract?",
    args: { contract: terms.contractWeight, shipped: terms.shipped },
    gives: { about: "weight left", unit: "lb" },
    basis: ["arithmetic"],
    notes: [
      "Blank cells are passed over: a tote without its weight counts as not shipped. When nothing is shipped yet, type 0.",
    ],
    examples: [
      {
        args: [
          32_000,
          [[2913], [2953], [2951], [2909], [2913], [2923], [2907], [2915]],
        ],
        gives: 8616,
        source: "hand arithmetic: 32,000 − 23,384",
      },
      {
        args: ["9,000 lb", [["4,000 lb", 5100]]],
        gives: -100,
        source: "hand arithmetic: 9,000 − 9,100, shipped 100 lb over",
      },
    ],
    native: nativeContractLeft,
    compute: ({ contract, shipped }) => pounds(contractLeft(contract, shipped)),
    why: ({ contract, shipped }, answer) =>
      `${inWords(contract)} agreed − ${inWords(sum(shipped))} shipped in ${shipped.length} weights = ${leftOrOver(Number(answer))}`,
  }),
  defineFunction({
    name: "MASS_BALANCE",
    family: "Totes and codes",
    summary: "Pounds of a lot that are neither out nor in stock.",
    question: "Is every pound of this lot accounted for?",
    args: {
      in: terms.received,
      out: terms.out,
      stock: optional(terms.stock, 0),
    },
    gives: { about: "weight unexplained", unit: "lb" },
    basis: ["arithmetic"],
    notes: [
      "Weigh what went out; gallons of hot and cold syrup do not balance. Purge and losses belong into the column of what went out.",
      "Negative: more went out than came in, so a weight is wrong or an entry is missing.",
      "Blank cells of what went out are passed over.",
    ],
    examples: [
      {
        args: [10_251, [[6272], [3416], [563]]],
        gives: 0,
        source: "hand arithmetic: 6,272 + 3,416 + 563 = 10,251, lot 25-01",
      },
      {
        args: [10_251, [[6272], [3416]], 540],
        gives: 23,
        source: "hand arithmetic: 10,251 − 9,688 − 540",
      },
    ],
    native: nativeMassBalance,
    compute: ({ in: received, out, stock }) =>
      pounds(massBalance(received, out, stock)),
    why: ({ in: received, out, stock }, answer) =>
      `${inWords(received)} in − ${inWords(sum(out))} out − ${inWords(stock)} in stock = ${unexplained(Number(answer), pounds(received))}`,
  }),
];

/** A price is shown to the last decimal agreed. */
const priceWords = (price: number): string =>
  price === roundHalfUp(price, 2) || price < 10
    ? dollars(price)
    : `$${entered(price)}`;

const leftOrOver = (left: number): string =>
  left < 0
    ? `${entered(-left)} lb shipped over the contract`
    : `${entered(left)} lb left`;

function unexplained(rest: number, received: number): string {
  if (rest === 0) return "0 lb: every pound is accounted for";
  const share = received > 0 ? `, ${percent(Math.abs(rest) / received)}` : "";
  return rest < 0
    ? `${entered(-rest)} lb more out than came in${share}`
    : `${entered(rest)} lb unexplained${share}`;
}
