import { unanswerable, unusable } from "../../measures/cannot-answer";
import type { DaySerial, Money } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";

export interface ListedPrice {
  readonly item: string;
  readonly from: DaySerial;
  readonly price: Money;
}

/**
 * The listed price of an item on a day: the latest that holds on or before it, whatever the order of the rows.
 * An item without a price by then has no answer (#N/A); two prices from one day are refused (#VALUE!).
 */
export function priceOn(
  item: string,
  day: DaySerial,
  prices: readonly ListedPrice[],
): ListedPrice {
  const own = prices.filter((p) => sameItem(p.item, item));
  if (own.length === 0) throw unanswerable(`no price for ${item} in the list`);
  const known = own.filter((p) => p.from <= day);
  const latest = Math.max(...known.map((p) => p.from));
  const [found, second] = known.filter((p) => p.from === latest);
  if (!found)
    throw unanswerable(`no price for ${item} on or before ${isoDate(day)}`);
  if (second)
    throw unusable(
      `prices: ${item} has two prices from ${isoDate(found.from)}`,
    );
  return found;
}

const sameItem = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().toLowerCase();
