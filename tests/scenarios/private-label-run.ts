import {
  as,
  type Kilojoules,
  type Money,
  type MoneyPerHour,
  type PerHour,
  type Seconds,
  type Share,
} from "../../src/measures/quantity";
import { KILOJOULES_PER_BTU } from "../../src/measures/units";
import { bestBuy } from "../../src/trade/costing/breaks";
import type { CostPart } from "../../src/trade/costing/cost-total";
import { piecesToDraw, toDraw } from "../../src/trade/costing/draw";
import { laborPerBottle, loadedWage } from "../../src/trade/costing/labor";
import {
  syrupCost,
  syrupPerBottle,
} from "../../src/trade/costing/syrup-per-bottle";
import { fuelForHeat } from "../../src/trade/filling/fuel";
import { runHours } from "../../src/trade/lines/run-hours";
import { inPounds, lb, lbPerGal, mL, money, perLb } from "./in-pounds";

const share = (value: number): Share => as<Share>(value);
const small = {
  rate: as<PerHour>(720),
  setup: as<Seconds>(25 * 60),
  clean: as<Seconds>(30 * 60),
};
const PURGE = lb(11);
const labels = {
  front: [
    [250, 0.58],
    [500, 0.41],
    [1000, 0.29],
    [2500, 0.2],
  ],
  back: [
    [250, 0.46],
    [500, 0.33],
    [1000, 0.24],
    [2500, 0.17],
  ],
} as const;

/** The private label of the scenarios on the small pair: 252.2 mL a bottle at 11.04 lb/gal, twelve to a case. */
export function privateLabelRun(
  bottles: number,
  bulkPrice: number,
  pallets: number,
): readonly CostPart[] {
  const inBottle = syrupPerBottle(mL(252.2), lbPerGal(11.04));
  const cases = bottles / 12;
  const crew = loadedWage(as<MoneyPerHour>(82), share(0.18), share(0));
  const labor = laborPerBottle(crew, { bottles, ...small });
  const syrup = inPounds(inBottle) * bottles + inPounds(PURGE);
  const hold = 14_000 * runHours(bottles, small.rate, small);
  const heat = (syrup * 125 * 0.66 + hold) * KILOJOULES_PER_BTU;
  const propane = fuelForHeat(as<Kilojoules>(heat), "propane", share(0.68));
  const glass = piecesToDraw({
    bottles,
    perBottle: 1,
    spoilage: share(0.015),
    carton: 12,
  });
  const part = (name: string, amount: number): CostPart => ({
    name,
    amount: money(amount),
  });
  return [
    part("syrup", syrupCost(inBottle, perLb(bulkPrice)) * bottles),
    part("purge", syrupCost(PURGE, perLb(bulkPrice))),
    part("bottles", glass * 1.42),
    part("caps", toDraw(bottles, share(0.008)) * 0.115),
    part("bands", toDraw(bottles, share(0.02)) * 0.034),
    part("front labels", labelCost(bottles, labels.front)),
    part("back labels", labelCost(bottles, labels.back)),
    part("cases", toDraw(cases, share(0.01)) * 1.62),
    part("case labels", toDraw(2 * cases, share(0.03)) * 0.052),
    part("ink", bottles * 0.0021),
    part("pallets", pallets * (12.75 + 3.2)),
    part("inbound freight", 185 + 28 + 28),
    part("labour", (labor.change + labor.running) * bottles),
    part("propane", propane * 2.65),
  ];
}

export const amountOf = (parts: readonly CostPart[], name: string): Money =>
  parts.find((p) => p.name === name)?.amount ?? money(Number.NaN);

/** Labels come in rolls of 250 with 3 % spoiled. */
function labelCost(
  bottles: number,
  table: readonly (readonly [number, number])[],
): number {
  const breaks = table.map(([from, price]) => ({ from, price: money(price) }));
  return bestBuy(toDraw(bottles, share(0.03)), breaks, 250).total;
}
