import {
  as,
  type ColdLitres,
  type Kilograms,
  type KgPerLitre,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../../measures/quantity";
import { toDraw } from "./draw";

/** Syrup drawn for a volume filled, as a scale in air shows it: what stays in the bottle and the share lost on the way. */
export const syrupPerBottle = (
  volume: ColdLitres,
  densityInAir: KgPerLitre,
  loss: Share = as<Share>(0),
): Kilograms => as<Kilograms>(toDraw(volume * densityInAir, loss, "loss"));

/** Money for a weight of syrup. */
export const syrupCost = (weight: Kilograms, price: MoneyPerKg): Money =>
  as<Money>(weight * price);
