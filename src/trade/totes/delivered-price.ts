import { KG_PER_LB } from "../../measures/units";
import type { Kilograms, Money } from "../../measures/quantity";

/** Where a price holds: at our dock, where the buyer pays the carrier, or delivered, where we do. */
export type Delivery = "dock" | "delivered";

/** One price on both footings, a pound, unrounded and in one money. */
export interface PriceBothWays {
  readonly freight: number;
  /** What is left at our dock. */
  readonly dock: number;
  /** What the syrup costs the buyer at the buyer's door. */
  readonly delivered: number;
}

/** The freight of a load shared by the pounds it carries, unrounded. */
export const freightPerPound = (freight: Money, load: Kilograms): number =>
  freight / (load / KG_PER_LB);

/** Puts a price a pound on both footings, so that a delivered price and a dock price can be held against each other. */
export function priceBothWays(
  perPound: number,
  holds: Delivery,
  freight: number,
): PriceBothWays {
  return holds === "dock"
    ? { freight, dock: perPound, delivered: perPound + freight }
    : { freight, dock: perPound - freight, delivered: perPound };
}
