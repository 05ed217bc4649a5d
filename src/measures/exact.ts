import Big from "big.js";

/**
 * A figure as a person wrote it: 15 significant digits are what a worksheet keeps, and the binary noise that a change of
 * unit leaves beyond them must decide nothing.
 */
export const written = (value: number): Big => new Big(value.toPrecision(15));

/** The same as a number: 2912 for the 2911.9999999999995 that a change of unit and back can leave. */
export const withoutNoise = (value: number): number =>
  Number(value.toPrecision(15));

/** What is left of a whole when parts are taken from it, in exact decimals: 0 when they add up to it, not 4.5e-13. */
export const leftOf = (whole: number, parts: readonly number[]): number =>
  Number(
    parts
      .reduce((left, part) => left.minus(written(part)), written(whole))
      .toString(),
  );
