import { unusable } from "../../measures/cannot-answer";
import { checkOf, counted, onlyDigits } from "./check-digit";

/** The digits of prefix and serial together. */
const ROOM = 16;

/**
 * The 18 digits of a pallet: extension, company prefix, serial with zeros in front, check digit. Refuses (#VALUE!) a
 * prefix that is not of 4 to 12 digits and a serial too long for what the prefix leaves. Source: gs1Keys.
 */
export function palletCode(
  prefix: string,
  serial: number,
  extension: number,
): string {
  const company = onlyDigits(prefix, "prefix");
  if (company.length < 4 || company.length > 12)
    throw unusable(
      `prefix: "${prefix}" has ${counted(company.length)}; a company prefix has 4 to 12, leading zeros counted`,
    );
  const room = ROOM - company.length;
  const own = String(serial);
  if (own.length > room)
    throw unusable(
      `serial: ${own} has ${counted(own.length)}, but after the prefix ${company} there is room for ${room}; start again from a smaller number, with another extension`,
    );
  const coded = `${extension}${company}${own.padStart(room, "0")}`;
  return `${coded}${checkOf(coded)}`;
}
