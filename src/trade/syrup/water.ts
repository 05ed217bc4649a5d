import { as, type Brix, type Kilograms } from "../../measures/quantity";

/** Water to add to syrup so that it reaches a target Brix; below zero, water to boil off. The solids stay. */
export const waterForBrix = (
  weight: Kilograms,
  brix: Brix,
  target: Brix,
): Kilograms => as<Kilograms>(weight * (brix / target - 1));
