import { unusable } from "../../measures/cannot-answer";
import { checkOf, counted, endsRight, onlyDigits } from "./check-digit";

/** The digits of a case between its indicator and its check digit. */
const ITEM_DIGITS = 12;

/**
 * The 14 digits of a case of bottles: indicator, the bottle's number without its check digit and with zeros in front, and
 * a check digit of its own. Refuses (#VALUE!) a number whose own check digit is wrong, and the indicator 9, which is for
 * goods of variable measure. Source: gs1Keys.
 */
export function caseCode(gtin: string, indicator: number): string {
  const number = onlyDigits(gtin, "gtin");
  if (number.length === ITEM_DIGITS + 2)
    throw unusable(
      `gtin: "${gtin}" has 14 digits, so it is a case's number already; type the number of one bottle`,
    );
  if (![8, ITEM_DIGITS, ITEM_DIGITS + 1].includes(number.length))
    throw unusable(
      `gtin: "${gtin}" has ${counted(number.length)}; the number of a bottle has 8, 12 or 13, leading zeros and check digit counted`,
    );
  const body = number.slice(0, -1);
  if (!endsRight(number))
    throw unusable(
      `gtin: "${gtin}" ends in ${number.slice(-1)}, but the check digit of ${body} is ${checkOf(body)}; look for a mistyped digit, or type ${body}${checkOf(body)}`,
    );
  if (indicator === 9)
    throw unusable(
      "indicator: 9 is for goods sold by measured weight; for a case of bottles take 1 to 8",
    );
  const coded = `${indicator}${body.padStart(ITEM_DIGITS, "0")}`;
  return `${coded}${checkOf(coded)}`;
}
