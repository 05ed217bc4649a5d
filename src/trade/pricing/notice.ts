import { as, type Money } from "../../measures/quantity";
import { type Held, heldPrices, type Standing } from "./bulk-move";
import { roundPrice } from "./round-price";

/** The figures of a letter that tells of a new price: old and new cost, the old price, and the new one either way. */
export interface Notice extends Held {
  readonly oldCost: Money;
  readonly newCost: Money;
  readonly oldPrice: Money;
  /** The same two with the house's ending. */
  readonly asked: Held;
}

/** No answer (#N/A) where a bottle is sold below cost. */
export function noticeOf(
  standing: Standing,
  move: Money,
  ending: Money,
): Notice {
  const held = heldPrices(standing, move);
  return {
    oldCost: standing.cost,
    newCost: as<Money>(standing.cost + move),
    oldPrice: standing.price,
    ...held,
    asked: {
      inMoney: roundPrice(held.inMoney, ending, "up"),
      inPercent: roundPrice(held.inPercent, ending, "up"),
    },
  };
}
