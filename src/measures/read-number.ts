import { unusable } from "./cannot-answer";

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
const GROUPED = /^[+-]?[1-9]\d{0,2}([,\s\u00a0\u202f]\d{3})+(\.\d+)?$/;
const DECIMAL_COMMA = /^[+-]?\d+,\d+$/;

/** Beyond this a change of unit, or a share shown in per cent, could overflow. */
export const LARGEST = 1e300;

export const isOrdinary = (value: number): boolean =>
  Math.abs(value) <= LARGEST;

/**
 * Reads a number a person typed: "2912", "2,912", "1 384", "66.4".
 * Refuses "66,4" (#VALUE!) with the reading it would have had, and anything that is no number.
 */
export function readNumber(text: string, name: string): number {
  const written = text.trim();
  const value = plainly(written);
  if (value !== undefined) {
    if (isOrdinary(value)) return value;
    throw unusable(`${name}: "${written}" is too large a number`);
  }
  if (DECIMAL_COMMA.test(written)) {
    throw unusable(
      `${name}: "${written}" looks like ${written.replace(",", ".")} written with a comma; type ${written.replace(",", ".")}`,
    );
  }
  throw unusable(`${name}: "${written}" is not a number`);
}

function plainly(written: string): number | undefined {
  if (PLAIN.test(written)) return Number(written);
  const separators = written.match(/[,\s\u00a0\u202f]/g);
  return GROUPED.test(written) && new Set(separators).size === 1
    ? Number(written.replace(/[,\s\u00a0\u202f]/g, ""))
    : undefined;
}
