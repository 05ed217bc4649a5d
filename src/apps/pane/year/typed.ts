import { unusable } from "../../../measures/cannot-answer";
import { readShare } from "../../../measures/read-share";
import type { CellValue } from "../../../sheets/workbook";

/** A price that may be left blank. Throws a sentence for what is none. */
export function typedPrice(typed: string): CellValue {
  const text = typed.trim().replace(/^\$/, "");
  if (text === "") return null;
  const price = Number(text);
  if (!Number.isFinite(price) || price < 0)
    throw unusable(`"${typed.trim()}" is no price: type dollars, 0 or more`);
  return price;
}

/** A share that may be left blank; percent or a part of one. */
export const typedShare = (typed: string): CellValue =>
  typed.trim() === "" ? null : readShare(typed, "the share");

/** A season's year. */
export function typedYear(typed: string): CellValue {
  const year = Number(typed.trim() || Number.NaN);
  if (!Number.isInteger(year) || year < 1900 || year > 9999)
    throw unusable(`"${typed.trim()}" is no year such as 2026`);
  return year;
}

/** A name that must be there. */
export function typedName(typed: string): CellValue {
  const name = typed.trim();
  if (name === "") throw unusable("needs a name");
  return name;
}
