import { as, type DaySerial } from "../measures/quantity";
import { calendarOf } from "../measures/read-date";
import type { Book } from "./book";
import { setting } from "./setting";

/** Where something that happened has a date; due dates and contract ends lie ahead and do not count. */
export const happenings = [
  ["Lots", "received"],
  ["LotUse", "date"],
  ["Runs", "date"],
  ["ToteShipments", "shipped"],
  ["Invoices", "date"],
  ["Payments", "paidOn"],
] as const;

/** The last day anything happened in the book; undefined in an empty book. */
export function newestDay(book: Book): DaySerial | undefined {
  const days = [
    ...book.lots.map((lot) => lot.received),
    ...book.lotUse.map((use) => use.date),
    ...book.runs.map((run) => run.date),
    ...book.toteShipments.map((tote) => tote.shipped),
    ...book.invoices.map((invoice) => invoice.date),
    ...book.payments.map((payment) => payment.paidOn),
  ];
  return days.length === 0
    ? undefined
    : as<DaySerial>(days.reduce((a, b) => Math.max(a, b), 0));
}

/** The day the book speaks of: the setting "Count date", else the last day anything happened. */
export const bookDay = (book: Book): DaySerial | undefined =>
  setting(book, "Count date") ?? newestDay(book);

/** The calendar year the book speaks of. */
export function bookSeason(book: Book): number | undefined {
  const day = bookDay(book);
  return day === undefined ? undefined : calendarOf(day).year;
}

/** The overheads of one season, by default the book's own. */
export const overheadsOf = (
  book: Book,
  season: number | undefined = bookSeason(book),
): Book["overheads"] =>
  book.overheads.filter((overhead) => overhead.season === season);
