import type { DaySerial } from "../measures/quantity";
import type { Book, BookRow } from "./book";
import { isSameName } from "./keys";
import { newestDay } from "./newest-day";

/** The newest bulk price of a kind of syrup on or before a day, by default the book's newest; undefined if none holds yet. */
export function bulkPrice(
  book: Book,
  kind: string,
  day: DaySerial | undefined = newestDay(book),
): BookRow<"bulkPrices"> | undefined {
  return book.bulkPrices
    .filter(
      (price) =>
        isSameName(price.syrupKind, kind) &&
        (day === undefined || price.validFrom <= day),
    )
    .reduce<BookRow<"bulkPrices"> | undefined>(
      (newest, price) =>
        newest === undefined || price.validFrom > newest.validFrom
          ? price
          : newest,
      undefined,
    );
}
