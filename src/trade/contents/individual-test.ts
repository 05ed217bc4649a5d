import { euSmallLots } from "../../standards/eu-small-lots";
import { type Decision, doublePlan } from "./double-plan";
import type { LotSample, Outcome } from "./lot";
import { isBelow } from "./sample";
import { doublePlanFor, singlePlan } from "./sampling";

/** Counts the bottles short by more than the allowed shortfall; short by exactly that much is not beyond it. */
export function individualTest(lot: LotSample): Outcome {
  const { verdict, accept, weighMore } = decide(lot);
  const found = beyondAmong(lot, lot.volumes.length);
  return {
    found,
    limit: accept,
    verdict,
    by: Math.abs(found - accept),
    weighMore,
  };
}

function decide(lot: LotSample): Decision {
  const { lotSize, rule, volumes } = lot;
  const weighed = volumes.length;
  const inAll = beyondAmong(lot, weighed);
  if (rule !== "EU") return single(singlePlan(lotSize, rule), weighed, inAll);
  if (lotSize < euSmallLots.below) {
    const allowed = Math.floor(lotSize * euSmallLots.allowedShare + 1e-9);
    return single({ sample: lotSize, allowed }, weighed, inAll);
  }
  const plan = doublePlanFor(lotSize);
  const inFirstSample = beyondAmong(lot, plan.sample);
  return doublePlan(plan, { weighed, inFirstSample, inAll });
}

/** Too few bottles can already show too many that are short, but not that a few are few enough. */
function single(
  plan: { readonly sample: number; readonly allowed: number },
  weighed: number,
  found: number,
): Decision {
  const accept = plan.allowed;
  if (found > accept) return { verdict: "fails", accept, weighMore: 0 };
  return found > 0 && weighed < plan.sample
    ? { verdict: "undecided", accept, weighMore: plan.sample - weighed }
    : { verdict: "passes", accept, weighMore: 0 };
}

const beyondAmong = (lot: LotSample, first: number): number =>
  lot.volumes
    .slice(0, first)
    .filter((v) => isBelow(v, lot.declared - lot.allowedShort)).length;
