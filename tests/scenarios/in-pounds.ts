import {
  as,
  type ColdLitres,
  type Kilograms,
  type KgPerLitre,
  type Money,
  type MoneyPerKg,
  type MoneyPerLitre,
} from "../../src/measures/quantity";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../src/measures/units";

/** The units the worked scenarios are written in. */
export const lb = (pounds: number): Kilograms =>
  as<Kilograms>(pounds * KG_PER_LB);
export const perLb = (price: number): MoneyPerKg =>
  as<MoneyPerKg>(price / KG_PER_LB);
export const perGal = (price: number): MoneyPerLitre =>
  as<MoneyPerLitre>(price / LITRES_PER_GALLON);
export const lbPerGal = (weight: number): KgPerLitre =>
  as<KgPerLitre>((weight * KG_PER_LB) / LITRES_PER_GALLON);
export const mL = (volume: number): ColdLitres => as<ColdLitres>(volume / 1000);
export const money = (amount: number): Money => as<Money>(amount);

export const inPounds = (weight: Kilograms): number => weight / KG_PER_LB;
export const aPound = (price: MoneyPerKg): number => price * KG_PER_LB;
export const aGallon = (price: MoneyPerLitre): number =>
  price * LITRES_PER_GALLON;
