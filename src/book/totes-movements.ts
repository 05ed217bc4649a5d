import { as, type DaySerial, type Kilograms } from "../measures/quantity";
import type { Movement } from "../trade/totes/movements";
import type { Book } from "./book";
import { sameName } from "./keys";
import { sourceLots } from "./source-lots";

/**
 * Every movement of syrup the book knows until a day: draws from lots and barrels, what oak took, source lots of runs and
 * totes that have no draw of their own, and totes to their buyers.
 */
export function bookMovements(
  book: Book,
  day?: DaySerial,
): readonly Movement[] {
  const drawnFor = new Set(
    book.lotUse.flatMap(({ to }) => (to === undefined ? [] : [sameName(to)])),
  );
  const all: Movement[] = [
    // What oak took is gone on the day the barrel is emptied, before anything is drawn from it.
    ...book.oakBarrels.flatMap(lostInOak),
    ...book.lotUse.map(({ date, from, to, what, pounds }) => ({
      day: date,
      from,
      to: to ?? what,
      weight: pounds,
    })),
    ...book.runs
      .filter(({ run }) => !drawnFor.has(sameName(run)))
      .flatMap(({ run, date, sourceLots: written }) =>
        fromSources(written, run, date),
      ),
    ...book.toteShipments
      .filter(({ ticket }) => !drawnFor.has(sameName(ticket)))
      .flatMap(({ ticket, shipped, sourceLots: written }) =>
        fromSources(written, ticket, shipped),
      ),
    // A tote leaves after it is filled: last of its day.
    ...book.toteShipments.flatMap(toBuyer),
  ];
  return day === undefined ? all : all.filter((move) => move.day <= day);
}

/** Where the syrup is that a barrel took. */
export const takenByOak = (barrel: string): string =>
  `taken by the oak of ${barrel}`;

function lostInOak({
  barrel,
  emptiedOn,
  poundsIn,
  poundsOut,
}: Book["oakBarrels"][number]): readonly Movement[] {
  if (emptiedOn === undefined || poundsOut === undefined) return [];
  const lost = poundsIn - poundsOut;
  return lost > 0
    ? [
        {
          day: emptiedOn,
          from: barrel,
          to: takenByOak(barrel),
          weight: as<Kilograms>(lost),
        },
      ]
    : [];
}

const fromSources = (
  written: string | undefined,
  to: string,
  day: DaySerial,
): readonly Movement[] =>
  sourceLots(written).flatMap(({ lot, weight }) =>
    weight === undefined ? [] : [{ day, from: lot, to, weight }],
  );

function toBuyer(row: Book["toteShipments"][number]): readonly Movement[] {
  // Swapped weights are no movement; the ticket's own finding names them.
  return row.customer === undefined || row.tare >= row.gross
    ? []
    : [
        {
          day: row.shipped,
          from: row.ticket,
          to: row.customer,
          weight: as<Kilograms>(row.gross - row.tare),
        },
      ];
}
