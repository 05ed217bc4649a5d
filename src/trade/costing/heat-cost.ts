import {
  as,
  type Brix,
  type Celsius,
  type Hours,
  type Kilograms,
  type Money,
  type PerHour,
  type Share,
} from "../../measures/quantity";
import { KILOJOULES_PER_BTU } from "../../measures/units";
import { heatEnergy } from "../syrup/heat";

export interface Heating {
  readonly fuelPrice: Money;
  /** BTU in one unit of fuel as it is sold. */
  readonly fuelHeat: number;
  readonly efficiency: Share;
  /** BTU an hour to keep the loop hot. */
  readonly holdLoss: number;
  readonly start: Celsius;
  readonly pack: Celsius;
  /** kW drawn while the line runs, and the price of a kWh; nothing where either is not known. */
  readonly power: number;
  readonly electricity: Money;
}

/** Fuel and electricity for a run: warming the syrup, keeping the loop hot for all its hours, pumps while it runs. */
export function heatCost(
  heating: Heating,
  run: {
    readonly syrup: Kilograms;
    readonly brix: Brix;
    readonly hours: Hours;
    readonly bottles: number;
    readonly rate: PerHour;
  },
): Money {
  const warming =
    heatEnergy(run.syrup, run.brix, heating.start, heating.pack) /
    KILOJOULES_PER_BTU;
  const fuel =
    ((warming + heating.holdLoss * run.hours) /
      heating.efficiency /
      heating.fuelHeat) *
    heating.fuelPrice;
  const power = heating.power * (run.bottles / run.rate) * heating.electricity;
  return as<Money>(fuel + power);
}
