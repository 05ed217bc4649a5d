import Big from "big.js";
import { unusable } from "./cannot-answer";
import { written } from "./exact";
import { as, type Money } from "./quantity";

/** Rounds to whole cents, half away from zero, as a worksheet's ROUND does. */
export const toCents = (amount: number): Money =>
  as<Money>(roundHalfUp(amount, 2));

/** Rounds half away from zero at a number of decimals. Works on the decimal a person sees: 1.005 gives 1.01. */
export function roundHalfUp(value: number, decimals: number): number {
  return (
    roundedPlainly(value, decimals, 1) ??
    Number(written(value).round(decimals, Big.roundHalfUp).toString())
  );
}

/** What a figure and the decimal a person sees of it may differ by, as a share: half a unit of its 15th digit. */
const NOISE = 1e-14;
/** Up to here whole numbers and their halves are held exactly, with room for the noise. */
const MOST_UNITS = 1e13;

/**
 * The same rounding in binary, hundreds of times faster, where no half is so near that noise could decide it; undefined
 * where one is, and exact decimals must. `figures` is of how many written figures the value is made.
 */
function roundedPlainly(
  value: number,
  decimals: number,
  figures: number,
): number | undefined {
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 9)
    return undefined;
  const scale = 10 ** decimals;
  const units = Math.abs(value) * scale;
  if (!(units < MOST_UNITS)) return undefined;
  const whole = Math.floor(units);
  const overHalf = units - whole - 0.5;
  if (Math.abs(overHalf) <= (figures + 1) * NOISE * units) return undefined;
  const rounded = (overHalf > 0 ? whole + 1 : whole) / scale;
  return value < 0 && rounded > 0 ? -rounded : rounded;
}

/**
 * Figures multiplied, and divided by one more, in exact decimals as they were written, and rounded once to whole cents:
 * 1,320.9 × 8.95 is 11,822.055 and gives 11,822.06.
 */
export const amountInCents = (times: readonly number[], dividedBy = 1): Money =>
  as<Money>(
    roundedPlainly(
      times.reduce((product, figure) => product * figure, 1) / dividedBy,
      2,
      times.length + 1,
    ) ??
      Number(
        times
          .reduce(
            (product, figure) => product.times(written(figure)),
            new Big(1),
          )
          .div(written(dividedBy))
          .round(2, Big.roundHalfUp)
          .toString(),
      ),
  );

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
  const shares = inWholeUnits(drivers);
  const sum = shares.reduce((a, b) => a + b, 0n);
  if (sum === 0n)
    throw unusable("drivers: they sum to 0, so there is nothing to share by");
  const cents = new Big(roundHalfUp(total, 2)).times(100);
  const sign = cents.lt(0) ? -1 : 1;
  const size = BigInt(cents.abs().toFixed(0));
  const parts = shares.map((share) => (size * share) / sum);
  const rests = shares.map((share) => (size * share) % sum);
  const left = Number(size - parts.reduce((a, b) => a + b, 0n));
  const given = new Set(largestFirst(rests).slice(0, left));
  return parts.map((part, i) =>
    as<Money>((sign * Number(part + (given.has(i) ? 1n : 0n))) / 100),
  );
}

/** Figures as whole numbers in one common unit small enough for all of them; whole numbers share exactly and fast. */
function inWholeUnits(figures: readonly number[]): readonly bigint[] {
  const parts = figures.map((value) => {
    const [digits = "", exponent = "0"] = value.toExponential().split("e");
    const whole = digits.replace(".", "");
    return { whole, power: Number(exponent) - whole.length + 1 };
  });
  const least = parts.reduce((low, { power }) => Math.min(low, power), 0);
  return parts.map(({ whole, power }) =>
    BigInt(whole + "0".repeat(whole === "0" ? 0 : power - least)),
  );
}

/** The places of the values from the largest down; of equals the first. */
function largestFirst(values: readonly bigint[]): readonly number[] {
  // Plain numbers compare many times faster, and where two differ they are in the order of the whole numbers behind them.
  const rounded = values.map(Number);
  const byValue = (a: number, b: number): number =>
    (rounded[b] ?? 0) - (rounded[a] ?? 0) ||
    Number((values[b] ?? 0n) - (values[a] ?? 0n)) ||
    a - b;
  return values.map((_, place) => place).sort(byValue);
}
