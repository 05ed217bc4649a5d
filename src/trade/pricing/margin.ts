import { unanswerable } from "../../measures/cannot-answer";
import { roundHalfUp } from "../../measures/money";
import { as, type Money, type Share } from "../../measures/quantity";

export interface Wanted {
  readonly cost: Money;
  /** On the price. */
  readonly margin: Share;
  /** Everything else that is taken as a share of the price: sales fees, marketing, returns. */
  readonly feeShare: Share;
  readonly fixedFee: Money;
}

/** The price that leaves the margin after fees. No answer (#N/A) where the shares take the whole price. */
export function priceForMargin({
  cost,
  margin,
  feeShare,
  fixedFee,
}: Wanted): Money {
  // 90 % + 10 % is all of it, whatever the last binary digit says.
  const taken = roundHalfUp(margin + feeShare, 12);
  if (taken >= 1)
    throw unanswerable(
      `no price works: margin and fees take ${roundHalfUp(taken * 100, 4)} % of it`,
    );
  return as<Money>((cost + fixedFee) / (1 - margin - feeShare));
}

/** Profit as a share of the price. */
export const margin = (price: Money, cost: Money): Share =>
  as<Share>((price - cost) / price);

/** Profit as a share of the cost. */
export const markup = (price: Money, cost: Money): Share =>
  as<Share>((price - cost) / cost);
