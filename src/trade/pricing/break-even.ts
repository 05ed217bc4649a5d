import { unanswerable } from "../../measures/cannot-answer";
import type { Money } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";

/** Whole units that earn back money spent once. No answer (#N/A) where a unit earns nothing. */
export function breakEvenUnits(
  oneTime: Money,
  price: Money,
  unitCost: Money,
): number {
  const contribution = price - unitCost;
  if (contribution <= 0)
    throw unanswerable(
      `never: a unit sold at ${price} does not earn its cost of ${unitCost}`,
    );
  return wholeUp(oneTime / contribution);
}
