import { leftOf } from "../../measures/exact";
import { roundHalfUp, toCents } from "../../measures/money";
import {
  as,
  type Brix,
  type Kilograms,
  type Money,
  type Share,
} from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import type { SaleBasis } from "./sale-amount";
import { ticketAmount } from "./ticket-amount";

/** Two certified scales lie closer than this. Common practice, no source; what binds is what the contract says. */
export const USUAL_TOLERANCE = as<Share>(0.005);

/** A buyer's net weight against ours; every figure is the buyer's less ours, below 0 where the buyer finds less. */
export interface WeightDifference {
  readonly weight: Kilograms;
  /** Of our net weight. */
  readonly share: number;
  /** The ticket at the buyer's weight less the ticket at ours, each rounded as it is billed. */
  readonly money: Money;
  /** Farther apart than the tolerance; exactly the tolerance is not beyond it. */
  readonly isBeyond: boolean;
}

export interface WeighedTwice {
  readonly ours: Kilograms;
  readonly theirs: Kilograms;
  /** The ticket's own price, basis and Brix. */
  readonly price: number;
  readonly basis: SaleBasis;
  readonly brix: Brix;
}

/** What two weighings of one tote differ by, in weight, part and money. `tolerance` is a part of our weight. */
export function weightDifference(
  { ours, theirs, price, basis, brix }: WeighedTwice,
  tolerance: Share = USUAL_TOLERANCE,
): WeightDifference {
  const weight = as<Kilograms>(leftOf(theirs, [ours]));
  const billed = (net: Kilograms): Money =>
    ticketAmount(net, price, basis, brix).amount;
  return {
    weight,
    share: weight / ours,
    money: toCents(billed(theirs) - billed(ours)),
    isBeyond:
      roundHalfUp((Math.abs(weight) - tolerance * ours) / KG_PER_LB, 6) > 0,
  };
}
