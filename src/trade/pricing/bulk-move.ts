import { unanswerable } from "../../measures/cannot-answer";
import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../../measures/quantity";
import { priceForMargin } from "./margin";

/** What a bottle of a run costs more when its syrup gets dearer: all that is drawn for it, purge included. */
export const costMove = (drawn: Kilograms, move: MoneyPerKg): Money =>
  as<Money>(drawn * move);

/** A price, and what is kept of it, before the cost moves. */
export interface Standing {
  readonly cost: Money;
  readonly price: Money;
  /** Everything the channel takes as a share of the price. */
  readonly shares: Share;
  readonly fixedPerBottle: Money;
}

/** Two ways to hold what a bottle earns when its cost moves. */
export interface Held {
  /** The price that leaves the same money a bottle after the channel's shares. */
  readonly inMoney: Money;
  /** The price that leaves the same share of it. */
  readonly inPercent: Money;
}

/** The prices that hold what is left now, in money and in percent. No answer (#N/A) where a bottle is sold below cost. */
export function heldPrices(now: Standing, move: Money): Held {
  const { cost, price, shares, fixedPerBottle } = now;
  const kept = as<Share>(1 - shares - (cost + fixedPerBottle) / price);
  if (kept < 0)
    throw unanswerable(
      `at ${price} a bottle is sold below cost, so there is nothing to hold`,
    );
  const moved = as<Money>(cost + move);
  return {
    inMoney: priceForMargin({
      cost: as<Money>(moved + kept * price),
      margin: as<Share>(0),
      feeShare: shares,
      fixedFee: fixedPerBottle,
    }),
    inPercent: priceForMargin({
      cost: moved,
      margin: kept,
      feeShare: shares,
      fixedFee: fixedPerBottle,
    }),
  };
}
