import { unanswerable } from "../../measures/cannot-answer";
import type { Money } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";

/** What a run costs on a line: once for set-up, clean-down and purged syrup, and again for every bottle. */
export interface RunCost {
  readonly fixed: Money;
  readonly each: Money;
}

/**
 * The run size from which line b costs no more than line a, in whole bottles.
 * No answer (#N/A) where b is cheaper for every run, for none, or only for small ones.
 */
export function crossover(a: RunCost, b: RunCost): number {
  const moreFixed = b.fixed - a.fixed;
  const savedEach = a.each - b.each;
  if (moreFixed > 0 && savedEach > 0)
    return Math.max(1, wholeUp(moreFixed / savedEach));
  if (moreFixed === 0 && savedEach === 0)
    throw unanswerable("a and b cost the same at every run size");
  if (moreFixed <= 0 && savedEach >= 0)
    throw unanswerable(
      "always: b costs no more than a from the first bottle on",
    );
  if (moreFixed >= 0)
    throw unanswerable("never: b costs more than a at every run size");
  throw unanswerable(
    `only small runs: b is cheaper below ${wholeUp(moreFixed / savedEach)} bottles, a from there on`,
  );
}
