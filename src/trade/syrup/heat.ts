import {
  as,
  type Brix,
  type Celsius,
  type Kilograms,
  type Kilojoules,
  type KilojoulesPerKgK,
} from "../../measures/quantity";
import { sucroseHeatCapacity } from "../../standards/heat-capacity";

/** Heat capacity of syrup taken as sucrose of equal Brix, 0-85 °Bx and 0-100 °C, ±3 %. Source: heatCapacityForm. */
export function heatCapacity(
  brix: Brix,
  temperature: Celsius,
): KilojoulesPerKgK {
  const { water, solids, warming } = sucroseHeatCapacity;
  return as<KilojoulesPerKgK>(
    water - solids * brix + warming * brix * temperature,
  );
}

/**
 * Heat to bring syrup from one temperature to another; below zero when it cools. The capacity is a straight line in
 * temperature, so its value half way is its exact average.
 */
export const heatEnergy = (
  weight: Kilograms,
  brix: Brix,
  from: Celsius,
  to: Celsius,
): Kilojoules =>
  as<Kilojoules>(
    weight * heatCapacity(brix, as<Celsius>((from + to) / 2)) * (to - from),
  );
