import type { DaySerial } from "../measures/quantity";
import { serialOf } from "../measures/read-date";
import { LITRES_PER_GALLON } from "../measures/units";
import type { SeasonBefore, SeasonDone } from "../trade/costing/overhead-share";
import type { Book, BookRow } from "./book";
import { hoursOf, runsIn } from "./season-runs";

/** The last day of a season, which is a calendar year. */
export const lastDayOf = (season: number): DaySerial =>
  serialOf(season, 12, 31);

/** What a season has done so far, by the book's own runs and lots. */
export function seasonDone(book: Book, season: number): SeasonDone {
  const runs = runsIn(book, season);
  return {
    runs: runs.length,
    lots: book.lots.filter((lot) => lot.cropYear === season).length,
    gallons: runs.reduce(
      (sum, run) =>
        sum + (run.goodBottles * run.averageFill) / LITRES_PER_GALLON,
      0,
    ),
    hours: runs.map((run) => ({ line: run.line, hours: hoursOf(run) })),
  };
}

/**
 * The closed season whose totals stand in for a season on a day: its own, if the book was rolled when it closed, else the
 * one before, until the season's last day. Undefined where the book carries none.
 */
export function seasonBefore(
  book: Book,
  season: number,
  asOf: DaySerial,
): SeasonBefore | undefined {
  const own = totalsOf(book, season);
  const before =
    own.length > 0 || asOf >= lastDayOf(season)
      ? own
      : totalsOf(book, season - 1);
  const first = before[0];
  if (first === undefined) return undefined;
  const amount = (what: Row["what"]): number =>
    before
      .filter((row) => row.what === what)
      .reduce((sum, row) => sum + row.amount, 0);
  return {
    season: first.season,
    runs: amount("runs"),
    lots: amount("lots bought"),
    gallons: amount("gallons packed"),
    hours: before
      .filter(({ what }) => what === "hours of a line")
      .map((row) => ({ line: row.of ?? "", hours: row.amount })),
  };
}

type Row = BookRow<"seasonTotals">;

const totalsOf = (book: Book, season: number): readonly Row[] =>
  book.seasonTotals.filter((row) => row.season === season);

/** The words that mark a cost some of whose overheads are shared over a closed season; one wording for sheets, pane and command line. */
export const estimateWords = (season: number): string =>
  `estimate from season ${season}`;
