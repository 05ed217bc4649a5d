import { as, type DaySerial, type Money } from "../measures/quantity";
import { LITRES_PER_GALLON } from "../measures/units";
import type { Season } from "../trade/costing/overheads-by-driver";
import type { Book } from "./book";
import { priceIn } from "./costing-facts";
import { isSameName, sameName } from "./keys";
import { newestDay } from "./newest-day";
import { hoursOf, runsIn } from "./season-runs";

/** The channel a season's bottles are valued in where nobody names another: the first that a shop buys from. */
export const valuingChannel = (book: Book): string =>
  (
    book.channels.find(({ buyerMargin }) => (buyerMargin ?? 0) > 0) ??
    book.channels[0]
  )?.channel ?? "";

/** What a season has run, bought and could sell for, on a day, by default the book's newest. */
export function seasonOf(
  book: Book,
  season: number,
  how: { readonly channel?: string; readonly asOf?: DaySerial } = {},
): Season {
  const channel = how.channel ?? valuingChannel(book);
  const asOf = how.asOf ?? newestDay(book) ?? as<DaySerial>(0);
  return {
    lotsBought: book.lots.filter((lot) => lot.cropYear === season).length,
    runs: runsIn(book, season).map((run) => {
      const price = valuedAt(book, run.product, channel, asOf);
      return {
        run: run.run,
        product: sameName(run.product),
        line: run.line,
        bottles: run.goodBottles,
        gallons: (run.goodBottles * run.averageFill) / LITRES_PER_GALLON,
        hours: hoursOf(run),
        lotsDrawn: book.lotUse.filter(
          ({ to }) => to !== undefined && isSameName(to, run.run),
        ).length,
        revenue: price && as<Money>(run.goodBottles * price),
      };
    }),
  };
}

/**
 * The price in one channel, or the average of a product's newest prices where that channel has none.
 * Undefined for a product without a price by the day.
 */
export function valuedAt(
  book: Book,
  product: string,
  channel: string,
  asOf: DaySerial,
): Money | undefined {
  const own = priceIn(book, product, channel, asOf);
  if (own !== undefined) return own;
  const known = book.prices.filter(
    (row) => isSameName(row.product, product) && row.validFrom <= asOf,
  );
  const newest = Math.max(...known.map(({ validFrom }) => validFrom));
  const prices = known.filter(({ validFrom }) => validFrom === newest);
  return prices.length === 0
    ? undefined
    : as<Money>(
        prices.reduce((sum, { price }) => sum + price, 0) / prices.length,
      );
}
