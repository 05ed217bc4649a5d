import { unusable } from "../../measures/cannot-answer";
import type { Kilojoules, Share } from "../../measures/quantity";
import { KILOJOULES_PER_BTU } from "../../measures/units";
import { type Fuel, fuels } from "../../standards/fuels";

/** Fuel to buy for so much heat in the syrup, in the unit the fuel is sold by. Refuses an efficiency of 0 (#VALUE!). */
export function fuelForHeat(
  energy: Kilojoules,
  fuel: Fuel,
  efficiency: Share,
): number {
  if (efficiency <= 0)
    throw unusable("efficiency: at 0 % no fuel would be enough");
  return energy / KILOJOULES_PER_BTU / efficiency / fuels[fuel].btu;
}
