import { unusable } from "../../measures/cannot-answer";
import { as, type Kilograms, type Money } from "../../measures/quantity";
import { readNumber } from "../../measures/read-number";
import { readQuantity } from "../../measures/read-quantity";
import { unitNamed } from "../../measures/units";

/** A whole number from 1, as typed after an option. */
export function wholeOption(
  written: string,
  option: string,
  what: string,
): number {
  const value = readNumber(written, option);
  if (!Number.isInteger(value) || value < 1)
    throw unusable(
      `${option}: ${written} is not a whole number of ${what}, 1 or more.`,
    );
  return value;
}

/** Money from 0. */
export function amountOption(written: string, option: string): Money {
  return as<Money>(notBelow0(written, option));
}

export function notBelow0(written: string, option: string): number {
  const value = readNumber(written, option);
  if (value < 0) throw unusable(`${option}: ${written} is below 0.`);
  return value;
}

/** A weight above 0, in pounds or in the unit beside it. */
export function weightOption(written: string, option: string): Kilograms {
  const weight = readQuantity(written, unitNamed("lb"), option);
  if (weight <= 0)
    throw unusable(`${option}: ${written} is not a weight above 0.`);
  return as<Kilograms>(weight);
}

export const optional = <T>(
  written: string | undefined,
  read: (text: string) => T,
): T | undefined => (written === undefined ? undefined : read(written));
