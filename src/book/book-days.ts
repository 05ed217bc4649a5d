import { calendarOf } from "../measures/read-date";
import type { Book } from "./book";
import { newestDay } from "./newest-day";

/** The calendar year the book speaks of. */
export function bookSeason(book: Book): number | undefined {
  const day = newestDay(book);
  return day === undefined ? undefined : calendarOf(day).year;
}

/** The overheads of one season, by default the book's own. */
export const overheadsOf = (
  book: Book,
  season: number | undefined = bookSeason(book),
): Book["overheads"] =>
  book.overheads.filter((overhead) => overhead.season === season);
