import type { ColdLitres } from "../../measures/quantity";
import type { Decision } from "./double-plan";
import type { ContentsRule } from "./sampling";

/** Bottles weighed from one lot, in the order of weighing, and what they are held to. */
export interface LotSample {
  readonly volumes: readonly ColdLitres[];
  readonly declared: ColdLitres;
  readonly lotSize: number;
  readonly allowedShort: ColdLitres;
  readonly rule: ContentsRule;
  readonly houseGoal: ColdLitres;
}

/** One test of the lot. `limit` and `by` are missing where there is nothing to hold the bottles to. */
export interface Outcome<Found extends number = number> {
  readonly found: Found;
  readonly limit: Found | undefined;
  readonly verdict: Decision["verdict"] | "no test";
  /** How far from the limit, on either side. */
  readonly by: Found | undefined;
  readonly weighMore: number;
}
