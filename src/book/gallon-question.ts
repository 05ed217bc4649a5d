import { type Gallon, WHICH_GALLON } from "../measures/gallon";
import type { Book } from "./book";
import { type Finding, listed } from "./finding";
import { NAME_THE_GALLON } from "./gallon";
import { priceBases } from "./price-bases";

/**
 * All findings, with one question in place of everything that waits for the same answer: which gallon the book means.
 * What waits counts as not entered until then.
 */
export function gallonAskedOnce(
  gallon: Gallon,
  book: Book,
  findings: readonly Finding[],
): readonly Finding[] {
  if (gallon !== "unsaid") return findings;
  const waiting = findings.filter(({ meaning }) =>
    meaning.includes(WHICH_GALLON),
  );
  const places = [
    ...waiting.map(({ where, found }) => `${where} (${found})`),
    ...book.toteContracts
      .filter(({ basis }) => priceBases[basis].basis === "per gal")
      .map(({ place, basis }) => `${place}, Price basis ("${basis}")`),
  ];
  const [first, ...others] = places;
  if (first === undefined) return findings;
  return [
    {
      where: first,
      found: `gallons in a book for Canada${others.length === 0 ? "" : `, and as well in ${listed(others, 6)}`}`,
      meaning: `these ${WHICH_GALLON}, and count as not entered until the book says`,
      todo: NAME_THE_GALLON,
    },
    ...findings.filter((finding) => !waiting.includes(finding)),
  ];
}
