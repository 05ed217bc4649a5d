import { as, type Kilograms } from "../measures/quantity";
import type { Book, BookRow } from "./book";
import { isSameName } from "./keys";

/** Weight drawn so far from a lot or barrel. */
export const drawnFrom = (book: Book, name: string): Kilograms =>
  total(book.lotUse.filter((use) => isSameName(use.from, name)));

/** Weight drawn for a run, barrel or tote ticket. */
export const drawnFor = (book: Book, name: string): Kilograms =>
  total(
    book.lotUse.filter(
      (use) => use.to !== undefined && isSameName(use.to, name),
    ),
  );

/** Weight left of a lot by the book; negative where more was drawn than bought. */
export const leftOfLot = (book: Book, lot: BookRow<"lots">): Kilograms =>
  as<Kilograms>(lot.net - drawnFrom(book, lot.lot));

/** Weight left in a barrel by the book: all of it while it is aging. */
export const leftInBarrel = (
  book: Book,
  barrel: BookRow<"oakBarrels">,
): Kilograms =>
  as<Kilograms>(
    (barrel.poundsOut ?? barrel.poundsIn) - drawnFrom(book, barrel.barrel),
  );

const total = (uses: Book["lotUse"]): Kilograms =>
  as<Kilograms>(uses.reduce((sum, use) => sum + use.pounds, 0));
