import type { DaySerial } from "../measures/quantity";
import type { Book, BookRow } from "./book";
import { bookDay } from "./book-days";
import { isSameName } from "./keys";

/** The newest bulk price of a kind of syrup on or before a day, by default the book's day; undefined if none holds yet. */
export function bulkPrice(
  book: Book,
  kind: string,
  day: DaySerial | undefined = bookDay(book),
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
