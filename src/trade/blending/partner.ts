import { unanswerable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Kilograms,
  type Share,
} from "../../measures/quantity";

/** Two lots and the Brix that a mix of them is to have. */
export interface Pair {
  readonly brixA: Brix;
  readonly brixB: Brix;
  readonly target: Brix;
}

/**
 * Weight of lot B that brings a weight of lot A to the target. A target that no weight of B brings about has no answer
 * (#N/A).
 */
export function blendPartner(weightA: Kilograms, pair: Pair): Kilograms {
  const { brixA, brixB, target } = pair;
  refuseOutOfReach(pair);
  if (brixB === target)
    throw unanswerable(
      `lot B is at ${target} itself: no weight of it brings lot A there; a lot beyond ${target} is wanted`,
    );
  return as<Kilograms>((weightA * (target - brixA)) / (brixB - target));
}

/** The parts of lots A and B in a mix at the target; they add up to 1. Out of reach has no answer (#N/A). */
export function blendShares(pair: Pair): {
  readonly a: Share;
  readonly b: Share;
} {
  const { brixA, brixB, target } = pair;
  refuseOutOfReach(pair);
  const a = (brixB - target) / (brixB - brixA);
  return { a: as<Share>(a), b: as<Share>(1 - a) };
}

function refuseOutOfReach({ brixA, brixB, target }: Pair): void {
  if (brixA < target && brixB < target)
    throw unanswerable(`both lots are below ${target}`);
  if (brixA > target && brixB > target)
    throw unanswerable(`both lots are above ${target}`);
  if (brixA === brixB)
    throw unanswerable(
      `both lots are at ${target} already: any weight of B keeps it there`,
    );
}
