import {
  as,
  type MoneyPerHour,
  type PerHour,
  type Seconds,
  type Share,
} from "../measures/quantity";
import { loadedWage } from "../trade/costing/labor";
import type { Line } from "../trade/lines/choice";
import type { Book, BookRow } from "./book";
import { isSameName as same } from "./keys";

/** A line of the book as it would fill one product. */
export function lineOf(
  book: Book,
  product: BookRow<"products">,
  row: BookRow<"lines">,
): Line {
  // A product's fill time is taken on the quickest filler; another line's differs as its own 250 mL time does.
  const quickest = Math.min(...book.lines.map((l) => l.fillTime));
  return {
    name: row.line,
    heads: {
      count: row.heads,
      fill: as<Seconds>((product.fillTime * row.fillTime) / quickest),
      handling: row.handlingTime,
      running: row.running,
    },
    ...(row.station !== undefined && row.stationRate !== undefined
      ? { station: { name: row.station, rate: as<PerHour>(row.stationRate) } }
      : {}),
    setup: row.setup,
    clean: row.cleanDown,
    purge: row.purge,
    crew: crewCost(book, row.line),
    usual: book.products.some(
      (p) => p.usualLine !== undefined && same(p.usualLine, row.line),
    ),
  };
}

const crewCost = (book: Book, line: string): MoneyPerHour =>
  as<MoneyPerHour>(
    book.crew
      .filter((c) => same(c.line, line))
      .reduce((sum, { role, people }) => {
        const wage = book.wages.find((w) => same(w.role, role));
        return (
          sum +
          (wage
            ? people *
              loadedWage(
                as<MoneyPerHour>(wage.hourly),
                wage.addOns,
                as<Share>(0),
              )
            : Number.NaN)
        );
      }, 0) || 0,
  );
