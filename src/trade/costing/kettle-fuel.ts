import {
  as,
  type Brix,
  type HotLitres,
  type Hours,
  type Kilograms,
  type Money,
} from "../../measures/quantity";
import { KILOJOULES_PER_BTU } from "../../measures/units";
import { coldVolume } from "../filling/hot-volume";
import { heatEnergy } from "../syrup/heat";
import { weightOf } from "../syrup/weight";
import type { Heating } from "./heat-cost";

/** Fuel in the units it is sold in, and what it costs. */
export interface Fuel {
  readonly units: number;
  readonly cost: Money;
}

export interface KettleFuel {
  /** What one full kettle weighs in syrup. */
  readonly kettle: Kilograms;
  /** To warm one full kettle from the start temperature to the filling temperature. */
  readonly warming: Fuel;
  /** To keep the loop hot for an hour. */
  readonly holding: Fuel;
  /** To warm the whole run's syrup and keep the loop hot for all its hours. */
  readonly run: Fuel;
}

/** What the kettle burns. The pumps' electricity is not counted here. */
export function kettleFuel(
  heating: Heating,
  facts: {
    readonly brix: Brix;
    readonly hotVolume: HotLitres;
    readonly syrup: Kilograms;
    readonly hours: Hours;
  },
): KettleFuel {
  const { brix, hotVolume, syrup, hours } = facts;
  const kettle = weightOf(coldVolume(hotVolume, brix, heating.pack), brix);
  const warming = (weight: Kilograms): number =>
    heatEnergy(weight, brix, heating.start, heating.pack) / KILOJOULES_PER_BTU;
  const fuel = (btu: number): Fuel => {
    const units = btu / heating.efficiency / heating.fuelHeat;
    return { units, cost: as<Money>(units * heating.fuelPrice) };
  };
  return {
    kettle,
    warming: fuel(warming(kettle)),
    holding: fuel(heating.holdLoss),
    run: fuel(warming(syrup) + heating.holdLoss * hours),
  };
}
