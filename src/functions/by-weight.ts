import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerKg,
} from "../measures/quantity";
import { KG_PER_LB } from "../measures/units";

/** A price per pound, as worksheets state it, in the house unit. */
export const perKilogram = (pricePerPound: Money): MoneyPerKg =>
  as<MoneyPerKg>(pricePerPound / KG_PER_LB);

export const perPound = (price: MoneyPerKg): Money =>
  as<Money>(price * KG_PER_LB);

export const inPounds = (weight: Kilograms): number => weight / KG_PER_LB;
