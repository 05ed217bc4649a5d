import Big from "big.js";
import { unusable } from "./cannot-answer";
import { as, type Money } from "./quantity";

/** Rounds to whole cents, half away from zero, as a worksheet's ROUND does. */
export const toCents = (amount: number): Money =>
  as<Money>(roundHalfUp(amount, 2));

/** Rounds half away from zero at a number of decimals. Works on the decimal a person sees: 1.005 gives 1.01. */
export function roundHalfUp(value: number, decimals: number): number {
  // 15 significant digits are what a worksheet shows and rounds; binary noise beyond them must not decide a half.
  return Number(
    new Big(value.toPrecision(15)).round(decimals, Big.roundHalfUp).toString(),
  );
}

/**
 * Splits a total by drivers so that the parts sum to the total to the cent: each part is rounded down and the
 * cents left go to the largest remainders (first come, first served on a tie).
 * Refuses (#VALUE!) a negative driver or drivers that sum to zero.
 */
export function allocate(
  total: Money,
  drivers: readonly number[],
): readonly Money[] {
  if (drivers.some((d) => d < 0))
    throw unusable("drivers: a driver is negative");
  const sum = drivers.reduce((a, d) => a.plus(d), new Big(0));
  if (sum.eq(0))
    throw unusable("drivers: they sum to 0, so there is nothing to share by");
  const cents = new Big(roundHalfUp(total, 2)).times(100);
  const sign = cents.lt(0) ? -1 : 1;
  const size = cents.abs();
  const exact = drivers.map((d) => size.times(d).div(sum));
  const whole = exact.map((e) => e.round(0, Big.roundDown));
  const left = Number(
    size.minus(whole.reduce((a, w) => a.plus(w), new Big(0))).toString(),
  );
  const order = exact
    .map((e, i) => ({ i, rest: e.minus(whole[i] ?? 0) }))
    .sort((a, b) => b.rest.cmp(a.rest) || a.i - b.i)
    .slice(0, left)
    .map(({ i }) => i);
  return whole.map((w, i) =>
    as<Money>(
      (sign * Number(w.plus(order.includes(i) ? 1 : 0).toString())) / 100,
    ),
  );
}
