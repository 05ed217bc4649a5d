import type { DaySerial } from "../measures/quantity";
import type { Worth } from "../trade/totes/exchange";
import type { Book } from "./book";
import { setting } from "./setting";

/** The money the books are kept in. */
export const booksMoney = (book: Pick<Book, "settings">): string =>
  setting(book, "Books money") ?? "USD";

/**
 * What one unit of a money is worth in the books' own on a day. A book that keeps dated rates goes by the newest one of
 * that day or before, and a blank there is no rate; only a book without them goes by the one rate in Settings.
 */
export function worthIn(book: Pick<Book, "settings" | "exchangeRates">): Worth {
  const own = booksMoney(book);
  const dated = [...book.exchangeRates].sort((a, b) => a.from - b.from);
  const single = setting(book, "Canadian dollars per US dollar");
  const canadianPerUs = (day: DaySerial): number | undefined =>
    dated.length === 0
      ? single
      : dated.findLast(({ from }) => from <= day)?.rate;
  return (money, day) => {
    if (money === own) return 1;
    const rate = canadianPerUs(day);
    if (rate === undefined) return undefined;
    if (money === "CAD" && own === "USD") return 1 / rate;
    return money === "USD" && own === "CAD" ? rate : undefined;
  };
}
