import type { Book } from "./book";
import { sellingChecks } from "./checks/selling-checks";
import type { Finding } from "./finding";
import { priceList } from "./price-list";

/**
 * Everything a manager should be told unasked: what the book says of itself, and what shows once every product is
 * costed. What has no figure comes first, as something is left open by it; then the most money at stake.
 */
export const managerFindings = (
  book: Book,
  found: readonly Finding[],
): readonly Finding[] =>
  byStake([...found, ...sellingChecks(book, priceList(book))]);

/** The same finding once, the largest stake first; equals in the order they came. */
export function byStake(findings: readonly Finding[]): readonly Finding[] {
  const once = new Map(
    findings.map((one) => [`${one.where}|${one.found}`, one] as const),
  );
  return [...once.values()].sort(
    (a, b) => (b.atStake ?? Infinity) - (a.atStake ?? Infinity) || 0,
  );
}
