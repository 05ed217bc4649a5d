import {
  as,
  type KgPerLitre,
  type MoneyPerKg,
  type MoneyPerLitre,
} from "../../measures/quantity";

/** A price by weight as a price by volume at 68 °F. */
export const priceByVolume = (
  price: MoneyPerKg,
  densityInAir: KgPerLitre,
): MoneyPerLitre => as<MoneyPerLitre>(price * densityInAir);

/** A price by volume at 68 °F as a price by weight. */
export const priceByWeight = (
  price: MoneyPerLitre,
  densityInAir: KgPerLitre,
): MoneyPerKg => as<MoneyPerKg>(price / densityInAir);
