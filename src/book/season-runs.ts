import { as, type Hours } from "../measures/quantity";
import { calendarOf } from "../measures/read-date";
import type { Book, BookRow } from "./book";

/** The runs of a season in the book's order. */
export const runsIn = (book: Book, season: number): Book["runs"] =>
  book.runs.filter((run) => calendarOf(run.date).year === season);

/** Hours a run took with set-up and clean-down. */
export const hoursOf = (run: BookRow<"runs">): Hours =>
  as<Hours>((run.runningTime + run.setup + run.cleanDown) / 3600);
