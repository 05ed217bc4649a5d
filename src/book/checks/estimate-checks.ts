import { as } from "../../measures/quantity";
import { overheadPart } from "../../trade/costing/overhead-share";
import type { Book } from "../book";
import { bookSeason, overheadsOf } from "../book-days";
import { type Finding, listed } from "../finding";
import { newestDay } from "../newest-day";
import { estimateWords, seasonBefore, seasonDone } from "../season-totals";

/** Bills that are shared over a closed season, because this one has not done as much yet. */
export function estimateChecks(book: Book): readonly Finding[] {
  const day = newestDay(book);
  const season = bookSeason(book);
  if (day === undefined || season === undefined) return [];
  const before = seasonBefore(book, season, day);
  if (before === undefined) return [];
  const done = seasonDone(book, season);
  const estimated = overheadsOf(book, season).filter(
    (row) =>
      overheadPart(
        {
          item: row.item,
          perYear: row.perYear,
          toBulk: row.shareToBulk ?? as(0),
          driver: row.sharedBy,
        },
        { ...done, before, own: { gallons: 0, hours: 0, line: "" } },
      ).estimateFrom !== undefined,
  );
  const isClosed = before.season === season;
  const came = `what season ${before.season} came to (${before.runs} runs, ${Math.round(before.gallons).toLocaleString("en-US")} gal)`;
  return estimated.length === 0
    ? []
    : [
        {
          where: `Overheads, season ${season}`,
          found: `full costs are an ${estimateWords(before.season)}: ${listed(estimated.map(({ item }) => item))}`,
          meaning: isClosed
            ? `the book of that season is closed, and its bills are shared over ${came}`
            : `until season ${season} has done as much, each is shared over ${came}; so far this season has ${done.runs}`,
          todo: isClosed
            ? "enter this season's runs as they come"
            : "nothing: each goes over to this season's own figures once they are larger, and all of them do on its last day",
        },
      ];
}
