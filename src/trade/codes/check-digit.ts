import { unusable } from "../../measures/cannot-answer";

/** Lengths of numbers without their check digit: bottles of 8, 12 and 13 digits, cases of 14, pallets of 18. */
const WITHOUT_CHECK = [7, 11, 12, 13, 17] as const;

/**
 * The check digit of a number that has none yet: from the right its digits count 3, 1, 3, 1, …, and the check digit makes
 * the sum a multiple of ten. Refuses (#VALUE!) anything but digits, and a length no number has. Source: gs1CheckDigit.
 */
export function checkDigit(digits: string): number {
  const body = onlyDigits(digits, "digits");
  if (!WITHOUT_CHECK.some((length) => length === body.length))
    throw unusable(
      `digits: "${digits}" has ${counted(body.length)}; without its check digit a number has 7, 11, 12, 13 or 17, leading zeros counted${
        body.length > 1 && endsRight(body)
          ? `. It may have its check digit already: its last digit is right`
          : ""
      }`,
    );
  return checkOf(body);
}

export const withCheckDigit = (digits: string): string =>
  `${bare(digits)}${checkDigit(digits)}`;

/** The check digit of a body of any length that is known to hold digits only. */
export function checkOf(body: string): number {
  const sum = weightedSum(body);
  return (10 - (sum % 10)) % 10;
}

export const weightedSum = (body: string): number =>
  [...body]
    .reverse()
    .reduce((sum, digit, i) => sum + Number(digit) * (i % 2 === 0 ? 3 : 1), 0);

/** Whether the last digit is the check digit of those before it. */
export const endsRight = (number: string): boolean =>
  checkOf(number.slice(0, -1)) === Number(number.slice(-1));

/** The digits without the spaces and dashes people put between them; anything else is refused (#VALUE!). */
export function onlyDigits(text: string, name: string): string {
  const digits = bare(text);
  if (!/^\d+$/.test(digits))
    throw unusable(
      `${name}: "${text}" holds more than digits; type digits only`,
    );
  return digits;
}

export const counted = (length: number): string =>
  length === 1 ? "1 digit" : `${length} digits`;

const bare = (text: string): string => text.replace(/[\s-]/g, "");
