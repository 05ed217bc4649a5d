import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Kilograms,
  type MoneyPerKg,
} from "../../measures/quantity";

/** A weight of syrup and one figure of it. */
export interface Part<F extends number> {
  readonly weight: Kilograms;
  readonly figure: F;
}

/** Brix of a blend: the solids of all parts over their weight. No weight at all is refused (#VALUE!). */
export const blendBrix = (parts: readonly Part<Brix>[]): Brix =>
  as<Brix>(meanByWeight(parts));

/** Price of a blend by weight. No weight at all is refused (#VALUE!). */
export const blendPrice = (parts: readonly Part<MoneyPerKg>[]): MoneyPerKg =>
  as<MoneyPerKg>(meanByWeight(parts));

/**
 * Light transmission of a blend in %, the geometric mean by weight: an estimate. Above 0 to 100 %; no weight at all is
 * refused (#VALUE!). Source: absorbancesAdd.
 */
export const blendColor = (parts: readonly Part<number>[]): number =>
  Math.exp(
    meanByWeight(
      parts.map(({ weight, figure }) => ({ weight, figure: Math.log(figure) })),
    ),
  );

function meanByWeight(parts: readonly Part<number>[]): number {
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  if (total === 0)
    throw unusable("weights: they sum to 0 lb, so there is no blend");
  return (
    parts.reduce((sum, { weight, figure }) => sum + weight * figure, 0) / total
  );
}
