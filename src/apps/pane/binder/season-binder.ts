import { binderOf } from "../../../book/binder";
import type { Binder } from "../../../book/binder-contents";
import { calendarOf } from "../../../measures/read-date";
import type { BookReading } from "../../../book/read";
import { binderSheets } from "../../../sheets/binder/binder-sheets";
import type { Workbook } from "../../../sheets/workbook";
import { sentenceOf } from "../open-book";
import { sentence } from "../sentence";

/** Seasons the book holds something of, the newest first. */
export function seasonsIn({ book }: BookReading): readonly number[] {
  const days = [
    ...book.runs.map(({ date }) => date),
    ...book.lots.map(({ received }) => received),
  ];
  return [...new Set(days.map((day) => calendarOf(day).year))].sort(
    (a, b) => b - a,
  );
}

/** A season's binder, or the sentence that says why there is none. */
export function plannedBinder(
  { book, findings }: BookReading,
  season: number,
  lot: string,
): { readonly binder: Binder } | { readonly trouble: string } {
  try {
    return {
      binder: binderOf(book, season, {
        findings,
        lot: lot === "" ? undefined : lot,
      }),
    };
  } catch (problem) {
    // The pane has no options to name.
    return {
      trouble: sentence(sentenceOf(problem).replace(/^--season /, "Season ")),
    };
  }
}

/** The printable set as a workbook of its own. */
export const binderBook = (binder: Binder): Workbook => ({
  title: `${binder.farm}: records of season ${binder.season}`,
  sheets: binderSheets(binder),
  names: [],
});
