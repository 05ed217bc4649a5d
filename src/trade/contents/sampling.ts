import { unanswerable } from "../../measures/cannot-answer";
import { euDoublePlan } from "../../standards/eu-double-plan";
import { euMeanFactors } from "../../standards/eu-mean-factors";
import { euSmallLots } from "../../standards/eu-small-lots";
import { handbook133Plan } from "../../standards/handbook-133-plan";
import { oimlPlan, oimlSmallestLot } from "../../standards/oiml-plan";
import { tQuantile } from "./t-quantile";

/** NIST Handbook 133 category A, Directive 76/211/EEC, OIML R 87. */
export type ContentsRule = "US" | "EU" | "OIML";

/**
 * Bottles to weigh from a lot: for "EU" the first of two samples, or all of a small lot. No answer for a small lot under
 * "OIML", whose plans were not read. Sources: hb133Plan, euPrepackages, ukSmallLots, oimlR87.
 */
export function sampleSize(lot: number, rule: ContentsRule): number {
  if (rule !== "EU") return singlePlan(lot, rule).sample;
  return lot < euSmallLots.below ? lot : doublePlanFor(lot).sample;
}

interface SinglePlan {
  readonly lotUpTo: number;
  readonly sample: number;
  /** How many may be short by more than the allowed shortfall. */
  readonly allowed: number;
}

/** The plan with one sample, under "US" or "OIML". */
export function singlePlan(lot: number, rule: "US" | "OIML"): SinglePlan {
  if (rule === "US") return planFor<SinglePlan>(handbook133Plan, lot);
  if (lot < oimlSmallestLot)
    throw unanswerable(
      `lot size: the R 87 plans for lots below ${oimlSmallestLot} are not known here; weigh every bottle and ask your authority`,
    );
  return planFor<SinglePlan>(oimlPlan, lot);
}

/** The plan with two samples, under "EU", for lots that are not small. */
export const doublePlanFor = (lot: number): (typeof euDoublePlan)[number] =>
  planFor<(typeof euDoublePlan)[number]>(euDoublePlan, lot);

export interface SampleFactor {
  readonly factor: number;
  /** The rule prints this factor; otherwise it is worked out. */
  readonly printed: boolean;
}

/**
 * What to multiply the spread of so many bottles by, to know how far their average may fall short by chance. The factor
 * the rule prints, or else Student's t over the root of n. No answer for one bottle. Sources: hb133Plan, euPrepackages,
 * oimlR87, chance.
 */
export function sampleFactor(
  bottles: number,
  rule: ContentsRule,
): SampleFactor {
  if (bottles < 2)
    throw unanswerable(
      "n: one bottle has no spread, so no factor; only the individual test applies to it",
    );
  const known = printedFactors(rule).find(({ sample }) => sample === bottles);
  return known?.factor
    ? { factor: known.factor, printed: true }
    : {
        factor:
          tQuantile(twoSidedChance[rule], bottles - 1) / Math.sqrt(bottles),
        printed: false,
      };
}

/** The inspector's average is held to t at 97.5 % in the US, at 99.5 % elsewhere. */
export const twoSidedChance = { US: 0.05, EU: 0.01, OIML: 0.01 } as const;

interface Printed {
  readonly sample: number;
  readonly factor: number | undefined;
}

export const printedFactors = (rule: ContentsRule): readonly Printed[] =>
  ({ US: handbook133Plan, EU: euMeanFactors, OIML: oimlPlan })[rule];

function planFor<P extends { readonly lotUpTo: number }>(
  plans: readonly P[],
  lot: number,
): P {
  const plan = plans.find(({ lotUpTo }) => lot <= lotUpTo);
  if (!plan) throw new Error("The last plan is for lots of any size");
  return plan;
}
