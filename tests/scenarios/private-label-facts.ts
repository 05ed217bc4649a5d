import {
  as,
  type Brix,
  type Celsius,
  type MoneyPerHour,
  type PerHour,
  type Seconds,
  type Share,
} from "../../src/measures/quantity";
import { whereReaches } from "../../src/measures/root";
import type { BottleFacts } from "../../src/trade/costing/bottle-cost";
import { loadedWage } from "../../src/trade/costing/labor";
import type { Material } from "../../src/trade/costing/material-cost";
import { poundsPerGallon } from "../../src/trade/syrup/density";
import { heatCapacity } from "../../src/trade/syrup/heat";
import { lb, mL, money, perLb } from "./in-pounds";

const share = (value: number): Share => as<Share>(value);

const brix = as<Brix>(
  whereReaches((b) => poundsPerGallon(as<Brix>(b)), 11.04, 60, 70),
);
/** Where the heat capacity is the example's 0.66 BTU/lb·°F, which is 0.66 × 4.1868 kJ/kg·K. */
const middle = whereReaches(
  (t) => heatCapacity(brix, as<Celsius>(t)),
  0.66 * 4.1868,
  0,
  100,
);
const halfOf125 = (125 * 5) / 9 / 2;

const stock = (
  part: string,
  needed: number,
  spoilage: number,
  price: number,
): Material => ({
  part,
  needed,
  spoilage: share(spoilage),
  carton: 1,
  minimumOrder: 1,
  bought: "from stock",
  freight: money(0),
  breaks: [{ from: 1, price: money(price) }],
});
const bought = (
  part: string,
  needed: number,
  spoilage: number,
  carton: number,
  freight: number,
  breaks: readonly (readonly [number, number])[],
): Material => ({
  part,
  needed,
  spoilage: share(spoilage),
  carton,
  minimumOrder: carton,
  bought: "for each run",
  freight: money(freight),
  breaks: breaks.map(([from, price]) => ({ from, price: money(price) })),
});

/** One pallet takes 14 × 6 cases of 12. */
const palletsOf = (bottles: number): number =>
  Math.ceil(bottles / (14 * 6 * 12));

/**
 * The worked example of the private label once more, but as the costing sheet works it: whole pieces only. Where the
 * example charges 101.01 cases, a person takes 102.
 */
export const privateLabelFacts = (
  bottles: number,
  pallets = palletsOf(bottles),
): BottleFacts => ({
  bottles,
  perCase: 12,
  fill: mL(252.2),
  syrupKind: "Amber",
  brix,
  loss: share(0),
  bulkPrice: perLb(2.6),
  lots: [],
  lines: [
    {
      name: "Small pair",
      heads: {
        count: 8,
        fill: as<Seconds>(12),
        handling: as<Seconds>(10),
        running: share(0.78),
      },
      station: { name: "hand cap and invert", rate: as<PerHour>(720) },
      setup: as<Seconds>(25 * 60),
      clean: as<Seconds>(30 * 60),
      purge: lb(11),
      crew: loadedWage(as<MoneyPerHour>(82), share(0.18), share(0)),
      usual: true,
    },
  ],
  unknownParts: [],
  materials: [
    bought("bottles", bottles, 0.015, 12, 185, [
      [504, 1.42],
      [2016, 1.21],
    ]),
    stock("caps", bottles, 0.008, 0.115),
    stock("bands", bottles, 0.02, 0.034),
    bought("front labels", bottles, 0.03, 250, 28, [
      [250, 0.58],
      [500, 0.41],
      [1000, 0.29],
      [2500, 0.2],
    ]),
    bought("back labels", bottles, 0.03, 250, 28, [
      [250, 0.46],
      [500, 0.33],
      [1000, 0.24],
      [2500, 0.17],
    ]),
    stock("cases", bottles / 12, 0.01, 1.62),
    stock("case labels", bottles / 6, 0.03, 0.052),
    stock("ink", bottles, 0, 0.0021),
    stock("pallets", pallets, 0, 12.75 + 3.2),
  ],
  heating: {
    fuelPrice: money(2.65),
    fuelHeat: 91_500,
    efficiency: share(0.68),
    holdLoss: 14_000,
    start: as<Celsius>(middle - halfOf125),
    pack: as<Celsius>(middle + halfOf125),
    power: 0,
    electricity: money(0),
  },
  overheads: [],
  season: { runs: 0, lots: 0, gallons: 0, hours: [] },
});
