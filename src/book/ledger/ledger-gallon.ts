import { type Gallon, gallonNamed, WHICH_GALLON } from "../../measures/gallon";
import { NAME_THE_GALLON } from "../gallon";
import type { LedgerProposal } from "./propose";

/**
 * Which gallon the prices of a ledger are for, where they are for gallons: the one its headings name, else the book's. An
 * imperial one counts only in a book that says so.
 */
export function ledgerGallon(
  { headings, columns }: Pick<LedgerProposal, "headings" | "columns">,
  book: Gallon,
): Gallon {
  const words = [columns.price, columns.basis]
    .map((column) => headings.columns[column ?? -1]?.all ?? "")
    .join(" ");
  return gallonSaid(words, book, book);
}

/** The gallon that the words beside a price name; what else holds where they name none. */
export function gallonSaid(
  words: string,
  book: Gallon,
  otherwise: Gallon,
): Gallon {
  const named = gallonNamed(words);
  if (named === undefined) return otherwise;
  return named === "imperial" && book !== "imperial" ? "unsaid" : named;
}

/** What is said, once, of a ledger whose gallons nobody has named. */
export const ledgerGallonUnsaid = `the prices for a gallon ${WHICH_GALLON}; ${NAME_THE_GALLON}`;
