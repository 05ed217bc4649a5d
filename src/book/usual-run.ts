import type { DaySerial } from "../measures/quantity";
import type { Book, BookRow } from "./book";
import { isSameName } from "./keys";

/** A product's newest run, by a day if asked; undefined for one that the book has never run. */
export const newestRun = (
  book: Book,
  product: string,
  by: DaySerial | undefined = undefined,
): BookRow<"runs"> | undefined =>
  book.runs
    .filter(
      (run) =>
        isSameName(run.product, product) &&
        (by === undefined || run.date <= by),
    )
    .reduce<BookRow<"runs"> | undefined>(
      (latest, run) => (latest && latest.date >= run.date ? latest : run),
      undefined,
    );

/** What the closed season says of a product's newest run, in a book made by a season's roll. */
export const carriedOfRun = (
  book: Book,
  product: string,
  what: "bottles of the newest run" | "Brix of the newest run",
): number | undefined =>
  book.seasonTotals
    .filter((row) => row.what === what && isSameName(row.of ?? "", product))
    .reduce<BookRow<"seasonTotals"> | undefined>(
      (latest, row) => (latest && latest.season >= row.season ? latest : row),
      undefined,
    )?.amount;

/** Bottles of a product's newest run, that of a closed season included, or 1,200 for one that has never been run. */
export const usualRun = (book: Book, product: string): number =>
  newestRun(book, product)?.goodBottles ??
  carriedOfRun(book, product, "bottles of the newest run") ??
  1200;
