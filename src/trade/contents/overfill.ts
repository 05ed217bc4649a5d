import {
  as,
  type Brix,
  type ColdLitres,
  type Kilograms,
  type Money,
  type MoneyPerKg,
} from "../../measures/quantity";
import { weightOf } from "../syrup/weight";
import { mean } from "./sample";

/** A run as it was filled. */
export interface Filled {
  readonly volumes: readonly ColdLitres[];
  readonly declared: ColdLitres;
  readonly bottles: number;
  readonly brix: Brix;
}

/** Syrup given away above the declared volume; below zero, syrup the bottles are short of. */
export function overfillWeight(filled: Filled): Kilograms {
  const { volumes, declared, bottles, brix } = filled;
  const over = (mean(volumes) - declared) * bottles;
  return weightOf(as<ColdLitres>(over), brix);
}

export const overfillCost = (filled: Filled, price: MoneyPerKg): Money =>
  as<Money>(overfillWeight(filled) * price);
