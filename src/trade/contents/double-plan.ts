import type { euDoublePlan } from "../../standards/eu-double-plan";

/** Bottles beyond the allowed shortfall, in the order in which they were weighed. */
export interface ShortCounts {
  readonly weighed: number;
  readonly inFirstSample: number;
  readonly inAll: number;
}

export interface Decision {
  readonly verdict: "passes" | "fails" | "undecided";
  /** The count that would still pass at the stage the decision was made. */
  readonly accept: number;
  /** Bottles still to weigh before there can be a verdict. */
  readonly weighMore: number;
}

/**
 * Accepts, rejects or asks for more. Bottles beyond the first sample that nobody had to weigh are not passed over: when
 * they bring the count above the first number, both samples decide. Source: euPrepackages.
 */
export function doublePlan(
  plan: (typeof euDoublePlan)[number],
  { weighed, inFirstSample, inAll }: ShortCounts,
): Decision {
  const [accept, reject] = plan.first;
  const [acceptBoth, rejectBoth] = plan.both;
  const both = 2 * plan.sample;
  if (inFirstSample >= reject) return decided("fails", accept);
  if (weighed < plan.sample)
    return inAll === 0
      ? decided("passes", accept)
      : undecided(accept, plan.sample - weighed);
  if (inAll <= accept) return decided("passes", accept);
  if (inAll >= rejectBoth) return decided("fails", acceptBoth);
  return weighed < both
    ? undecided(acceptBoth, both - weighed)
    : decided("passes", acceptBoth);
}

const decided = (verdict: "passes" | "fails", accept: number): Decision => ({
  verdict,
  accept,
  weighMore: 0,
});

const undecided = (accept: number, weighMore: number): Decision => ({
  verdict: "undecided",
  accept,
  weighMore,
});
