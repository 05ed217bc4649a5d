import { unanswerable, unusable } from "../measures/cannot-answer";
import { LARGEST } from "../measures/read-number";
import type { CellTerm } from "../terms/term";
import type { Words } from "./words";

interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
  readonly unit?: string;
  readonly kind: string;
  readonly beyondIsUnanswerable?: boolean;
}

/** Refuses a value outside the term's limits; `raw` is what was written. */
type LimitsCheck = (value: number, words: Words, raw: unknown) => void;

export function limitsCheck(term: CellTerm): LimitsCheck {
  const limits: Limits = term;
  const { low, high } = wellInside(limits);
  return (value, words, raw) => {
    if (!(value > low && value < high)) check(limits, value, words, raw);
  };
}

/** The same for a value that a conversion may have left with binary noise, which must not decide at a limit. */
export function tidyLimitsCheck(term: CellTerm): LimitsCheck {
  const limits: Limits = term;
  const { low, high } = wellInside(limits);
  return (value, words, raw) => {
    if (!(value > low && value < high)) check(limits, tidy(value), words, raw);
  };
}

/**
 * What lies between these two is an ordinary number inside every limit, binary noise or not. Most values are nowhere near
 * a limit; telling so must cost nothing.
 */
export function wellInside(limits: Limits): {
  readonly low: number;
  readonly high: number;
} {
  return {
    low: Math.max(limits.min ?? -LARGEST, inwards(limits.above, 1), -LARGEST),
    high: Math.min(limits.max ?? LARGEST, inwards(limits.below, -1), LARGEST),
  };
}

const inwards = (limit: number | undefined, direction: 1 | -1): number =>
  limit === undefined
    ? -direction * Infinity
    : limit + direction * Math.abs(limit) * 1e-11;

function check(
  limits: Limits,
  value: number,
  words: Words,
  raw: unknown,
): void {
  const show = (n: number): string =>
    limits.kind === "share"
      ? `${tidy(n * 100)} %`
      : `${n}${limits.unit ? ` ${limits.unit}` : ""}`;
  const complain = (sentence: string): never => {
    throw (limits.beyondIsUnanswerable ? unanswerable : unusable)(
      `${words()}: ${typeof raw === "string" ? raw : show(value)} ${sentence}`,
    );
  };
  if (limits.min !== undefined && value < limits.min)
    complain(`is below ${show(limits.min)}`);
  if (limits.max !== undefined && value > limits.max)
    complain(`is above ${show(limits.max)}`);
  if (limits.above !== undefined && value <= limits.above)
    complain(`must be more than ${show(limits.above)}`);
  if (limits.below !== undefined && value >= limits.below)
    complain(`must be less than ${show(limits.below)}`);
}

/** Without the binary noise of a conversion. */
const tidy = (value: number): number => Number(value.toPrecision(12));
