import { unanswerable, unusable } from "../measures/cannot-answer";
import { as, type Kilograms } from "../measures/quantity";
import {
  type FilledTote,
  truckFit,
  type TruckFit,
  type TruckLimits,
  truckLoad,
  type TruckLoad,
} from "../trade/totes/truck-load";
import type { Book } from "./book";
import { sameName } from "./keys";
import { setting } from "./setting";

export interface TruckQuestion {
  readonly limits: TruckLimits;
  /** Tickets of the totes that are to ride, in the order they are loaded. */
  readonly tickets: readonly string[];
  /** Gross weights of filled totes that have no ticket yet. */
  readonly weights: readonly Kilograms[];
}

/** How many totes a truck takes, and whether the chosen ones ride on it. */
export interface TruckPlan {
  readonly limits: TruckLimits;
  /** The gross weight that totes are counted with, and whose it is. */
  readonly gross: Kilograms;
  readonly grossOf: string;
  readonly fit: TruckFit;
  /** Undefined where none were chosen. */
  readonly load: TruckLoad | undefined;
}

/**
 * Totes are counted with the heaviest gross weight among the chosen, else among all of the book, so that any of them
 * fits. Refuses (#VALUE!) a ticket twice; a ticket the book does not have, a book without a usable tote and a tote above
 * its plate have no answer (#N/A).
 */
export function truckPlan(book: Book, question: TruckQuestion): TruckPlan {
  const usual = setting(book, "Tote plate limit");
  const chosen: readonly FilledTote[] = [
    ...named(book, question.tickets, usual),
    ...question.weights.map((gross, i) => ({
      name: `tote ${i + 1} without a ticket`,
      gross,
      plateLimit: usual,
    })),
  ];
  const all = chosen.length > 0 ? chosen : weighed(book);
  const heaviest = all.reduce<FilledTote | undefined>(
    (most, one) => (most && most.gross >= one.gross ? most : one),
    undefined,
  );
  if (!heaviest)
    throw unanswerable(
      "The book has no weighed tote to count with; give the gross weights of filled totes",
    );
  return {
    limits: question.limits,
    gross: heaviest.gross,
    grossOf: `${heaviest.name}, the heaviest of the ${all.length} ${chosen.length > 0 ? "chosen" : "in the book"}`,
    fit: truckFit(heaviest.gross, question.limits),
    load: chosen.length === 0 ? undefined : truckLoad(chosen, question.limits),
  };
}

const weighed = (book: Book): readonly FilledTote[] =>
  book.toteShipments
    .filter(({ gross, tare }) => tare < gross)
    .map(({ ticket, gross, plateLimit }) => ({
      name: ticket,
      gross,
      plateLimit,
    }));

function named(
  book: Book,
  tickets: readonly string[],
  usual: Kilograms | undefined,
): readonly FilledTote[] {
  const rows = new Map(
    book.toteShipments.map((row) => [sameName(row.ticket), row]),
  );
  const seen = new Set<string>();
  return tickets.map((ticket) => {
    const row = rows.get(sameName(ticket));
    if (!row) {
      const last = book.toteShipments.at(-1)?.ticket;
      throw unanswerable(
        `tickets: no tote ${ticket} is in the book${last === undefined ? "" : `; the newest is ${last}`}`,
      );
    }
    if (seen.has(sameName(ticket)))
      throw unusable(
        `tickets: ${row.ticket} is named twice; a tote rides once`,
      );
    seen.add(sameName(ticket));
    if (row.tare >= row.gross)
      throw unusable(
        `${row.place}: gross and tare of ${row.ticket} look swapped; correct the row first`,
      );
    return {
      name: row.ticket,
      gross: as<Kilograms>(row.gross),
      plateLimit: row.plateLimit ?? usual,
    };
  });
}

/** What every answer about a truck says beside its figures. */
export const TRUCK_CAUTION =
  "The legal gross and axle limits are the carrier's and the state's to say. How the load lies on the axles is not worked out here.";
