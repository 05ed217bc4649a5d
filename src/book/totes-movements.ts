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
  const all: Movement[] = [];
  const add = (move: Movement): void => {
    if (day === undefined || move.day <= day) all.push(move);
  };
  // What oak took is gone on the day the barrel is emptied, before anything is drawn from it.
  for (const row of book.oakBarrels) lostInOak(row).forEach(add);
  const writings = new Set<string>();
  for (const { date, from, to, what, pounds } of book.lotUse) {
    if (to !== undefined) writings.add(to);
    add({ day: date, from, to: to ?? what, weight: pounds });
  }
  const drawnFor = new Set([...writings].map(sameName));
  for (const { run, date, sourceLots: written } of book.runs)
    if (!drawnFor.has(sameName(run)))
      fromSources(written, run, date).forEach(add);
  for (const { ticket, shipped, sourceLots: written } of book.toteShipments)
    if (!drawnFor.has(sameName(ticket)))
      fromSources(written, ticket, shipped).forEach(add);
  // A tote leaves after it is filled: last of its day.
  for (const row of book.toteShipments) toBuyer(row).forEach(add);
  return all;
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
