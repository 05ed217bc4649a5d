import type { Book } from "./book";
import { isSameName } from "./keys";

/** Bottles of a product's newest run, or 1,200 for one that has never been run. */
export function usualRun(book: Book, product: string): number {
  const newest = book.runs
    .filter((run) => isSameName(run.product, product))
    .reduce<Book["runs"][number] | undefined>(
      (latest, run) => (latest && latest.date >= run.date ? latest : run),
      undefined,
    );
  return newest?.goodBottles ?? 1200;
}
