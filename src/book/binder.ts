import { unanswerable, unusable } from "../measures/cannot-answer";
import { as, type DaySerial, type Kilograms } from "../measures/quantity";
import { calendarOf, serialOf } from "../measures/read-date";
import { fillsOf } from "./binder-fill";
import { binderGaps } from "./binder-gaps";
import type { Binder, BinderLot, BinderRun } from "./binder-contents";
import type { Book } from "./book";
import type { Finding } from "./finding";
import { isSameName, sameName } from "./keys";
import { newestDay } from "./newest-day";
import { runsIn } from "./season-runs";
import { setting } from "./setting";
import { drawnFor } from "./stock";
import { type BookLotBalance, lotBalances } from "./totes-lots";
import { type BookTrace, traceOf } from "./totes-trace";

/**
 * The binder of a season. The trace test follows one lot forward, the season's with the most draws or the one asked for,
 * and the season's newest run back. Refuses (#VALUE!) a season of which the book holds nothing.
 */
export function binderOf(
  book: Book,
  season: number,
  asked: {
    readonly findings: readonly Finding[];
    readonly lot?: string | undefined;
  },
): Binder {
  const newest = newestDay(book);
  if (newest === undefined)
    throw unanswerable("The book holds no date, so it has no season.");
  const first = serialOf(season, 1, 1);
  const asOf = as<DaySerial>(Math.min(newest, serialOf(season, 12, 31)));
  const isIn = (day: DaySerial): boolean => day >= first && day <= asOf;
  const runs = runsIn(book, season).map((row) => ({
    row,
    description:
      book.products.find(({ product }) => isSameName(product, row.product))
        ?.description ?? "",
    drawn: drawnFor(book, row.run),
  }));
  const lots = lotsOver(book, first, asOf);
  if (runs.length === 0 && lots.length === 0)
    throw unusable(
      `--season ${season}: the book, whose newest entry is of ${calendarOf(newest).year}, holds nothing of it.`,
    );
  const made = {
    season,
    farm: setting(book, "Farm") ?? "Our farm",
    asOf,
    runs,
    fills: fillsOf(book, runsIn(book, season)),
    lots,
    received: book.lots.filter(({ received }) => isIn(received)),
    totes: book.toteShipments.filter(({ shipped }) => isIn(shipped)),
    traces: tracesOf(book, { first, asOf, lot: asked.lot, runs }),
  };
  return { ...made, gaps: binderGaps(book, made, asked.findings) };
}

/** Lots with something in them during the season. */
function lotsOver(
  book: Book,
  first: DaySerial,
  asOf: DaySerial,
): readonly BinderLot[] {
  const before = new Map(
    lotBalances(book, as<DaySerial>(first - 1)).map((one) => [one.name, one]),
  );
  return lotBalances(book, asOf)
    .map((now) => over(before.get(now.name), now))
    .filter(
      ({ opening, received, byUse }) =>
        opening !== 0 || received !== 0 || byUse.size > 0,
    );
}

function over(
  before: BookLotBalance | undefined,
  { name, kind, received, byUse, left, counted }: BookLotBalance,
): BinderLot {
  return {
    name,
    kind,
    opening: as<Kilograms>(before?.left ?? 0),
    received: as<Kilograms>(before ? 0 : received),
    byUse: new Map(
      [...byUse].flatMap(([what, weight]) => {
        const own = weight - (before?.byUse.get(what) ?? 0);
        return Math.abs(own) < 1e-9 ? [] : [[what, as<Kilograms>(own)]];
      }),
    ),
    left,
    counted,
  };
}

function tracesOf(
  book: Book,
  {
    first,
    asOf,
    lot,
    runs,
  }: {
    readonly first: DaySerial;
    readonly asOf: DaySerial;
    readonly lot: string | undefined;
    readonly runs: readonly BinderRun[];
  },
): readonly BookTrace[] {
  const forward = lot ?? busiestLot(book, first, asOf);
  const newest = runs.reduce<BinderRun | undefined>(
    (latest, run) => (latest && latest.row.date >= run.row.date ? latest : run),
    undefined,
  );
  return [
    ...(forward === undefined ? [] : [traceOf(book, forward, "forward", asOf)]),
    ...(newest === undefined || newest.drawn === 0
      ? []
      : [traceOf(book, newest.row.run, "back", asOf)]),
  ];
}

function busiestLot(
  book: Book,
  first: DaySerial,
  asOf: DaySerial,
): string | undefined {
  const draws = new Map<string, number>();
  for (const { from, date } of book.lotUse)
    if (date >= first && date <= asOf)
      draws.set(sameName(from), (draws.get(sameName(from)) ?? 0) + 1);
  return (
    book.lots.reduce<{ readonly lot: string; readonly count: number }>(
      (most, { lot }) => {
        const count = draws.get(sameName(lot)) ?? 0;
        return count > most.count ? { lot, count } : most;
      },
      { lot: "", count: 0 },
    ).lot || undefined
  );
}
