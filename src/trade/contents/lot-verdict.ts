import { unusable } from "../../measures/cannot-answer";
import { as, type ColdLitres } from "../../measures/quantity";
import { euSmallLots } from "../../standards/eu-small-lots";
import { requireBelievableShort } from "./believable-short";
import { individualTest } from "./individual-test";
import type { LotSample, Outcome } from "./lot";
import { isBelow, mean, spread } from "./sample";
import { sampleFactor, sampleSize } from "./sampling";

export interface LotVerdict {
  readonly sampleSize: Outcome;
  readonly average: Outcome<ColdLitres>;
  readonly individual: Outcome;
  /** Only where the rule has one. */
  readonly twiceShort: Outcome | undefined;
  readonly houseGoal: Outcome<ColdLitres>;
}

/**
 * The tests of a lot, each by itself. Refuses (#VALUE!) when nothing was weighed or more than the lot; no answer where the
 * rule's plan for the lot is not known. Sources: hb133Rules, hb133Plan, euPrepackages, ukSmallLots, oimlR87.
 */
export function lotVerdict(lot: LotSample): LotVerdict {
  const { volumes, lotSize, rule, houseGoal } = lot;
  const weighed = volumes.length;
  requireBelievableShort(lot.allowedShort, lot.declared);
  if (weighed > lotSize)
    throw unusable(
      `volumes: ${weighed} bottles were weighed, but the lot is only ${lotSize}`,
    );
  const wanted = sampleSize(lotSize, rule);
  return {
    sampleSize: {
      found: weighed,
      limit: wanted,
      verdict: weighed < wanted ? "fails" : "passes",
      by: Math.abs(weighed - wanted),
      weighMore: Math.max(0, wanted - weighed),
    },
    average: averageTest(lot),
    individual: individualTest(lot),
    twiceShort: rule === "US" ? undefined : twiceShortTest(lot),
    houseGoal: heldTo(mean(volumes), houseGoal),
  };
}

/** What the average may be short by chance: the factor times the spread. */
export function allowance(lot: LotSample): ColdLitres {
  const { volumes, lotSize, rule } = lot;
  if (rule === "EU" && lotSize < euSmallLots.below) return as<ColdLitres>(0);
  const { factor } = sampleFactor(volumes.length, rule);
  return as<ColdLitres>(factor * spread(volumes));
}

function averageTest(lot: LotSample): Outcome<ColdLitres> {
  const { volumes, declared, lotSize, rule } = lot;
  const found = mean(volumes);
  const isSmallLot = rule === "EU" && lotSize < euSmallLots.below;
  if (volumes.length > 1 || isSmallLot)
    return heldTo(found, as<ColdLitres>(declared - allowance(lot)));
  return {
    found,
    limit: undefined,
    verdict: lotSize === 1 ? "no test" : "undecided",
    by: undefined,
    weighMore: sampleSize(lotSize, rule) - 1,
  };
}

function twiceShortTest(lot: LotSample): Outcome {
  const limit = lot.declared - 2 * lot.allowedShort;
  const found = lot.volumes.filter((v) => isBelow(v, limit)).length;
  return {
    found,
    limit: 0,
    verdict: found > 0 ? "fails" : "passes",
    by: found,
    weighMore: 0,
  };
}

const heldTo = (found: ColdLitres, limit: ColdLitres): Outcome<ColdLitres> => ({
  found,
  limit,
  verdict: isBelow(found, limit) ? "fails" : "passes",
  by: as<ColdLitres>(Math.abs(found - limit)),
  weighMore: 0,
});
