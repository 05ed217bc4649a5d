import { unusable } from "../../measures/cannot-answer";
import { amountInCents } from "../../measures/money";
import { withoutNoise } from "../../measures/exact";
import { as, type Kilograms, type Money } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { toteNet } from "./net";

/** Syrup in a lot of drums of one kind: gross less the tare of every drum. Refuses (#VALUE!) a tare that is not below the gross. */
export const drumsNet = (
  gross: Kilograms,
  drums: number,
  tareEach: Kilograms,
): Kilograms => toteNet(gross, as<Kilograms>(drums * tareEach));

/** Money a pound: what the grade pays, what is added and what is taken off. */
export interface GrowerPrice {
  readonly price: number;
  readonly premium: number;
  readonly deductions: number;
}

export interface Settlement {
  readonly perPound: number;
  readonly pay: Money;
}

/**
 * What a grower is paid: net pounds at price and premium less deductions, rounded once. Premium and deductions count on
 * the net weight. Refuses (#VALUE!) a negative figure, and deductions that leave no price.
 */
export function settlement(
  net: Kilograms,
  { price, premium, deductions }: GrowerPrice,
): Settlement {
  for (const [name, figure] of [
    ["price", price],
    ["premium", premium],
    ["deductions", deductions],
  ] as const)
    if (figure < 0)
      throw unusable(
        `${name}: ${String(figure)} is below 0; type it as a plain amount`,
      );
  const perPound = withoutNoise(price + premium - deductions);
  if (perPound <= 0)
    throw unusable(
      `deductions: ${String(deductions)} leave nothing of ${String(withoutNoise(price + premium))} a lb`,
    );
  return {
    perPound,
    pay: amountInCents([withoutNoise(net / KG_PER_LB), perPound]),
  };
}
