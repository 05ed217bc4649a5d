import type { Book } from "../../book/book";
import { sameName } from "../../book/keys";
import { newestDay } from "../../book/newest-day";
import { setting } from "../../book/setting";
import { sourceLots, type SourceLot } from "../../book/source-lots";
import { toteTickets, type ToteTicket } from "../../book/tote-tickets";
import { unanswerable, unusable } from "../../measures/cannot-answer";
import { poundsText } from "../../measures/pounds-text";
import type { DaySerial, Kilograms } from "../../measures/quantity";

/** A ticket that may stand on paper: its weights are whole and agree with each other. */
export interface PaperTicket extends ToteTicket {
  readonly net: Kilograms;
  readonly lots: readonly SourceLot[];
}

/** What the papers of one tote say. */
export interface PaperFacts {
  readonly farm: string;
  readonly ticket: PaperTicket;
  /** Every tote on the same bill of lading, this one among them; empty without a bill. */
  readonly load: readonly PaperTicket[];
}

/**
 * The facts for the papers of one tote. A ticket the book does not know has no answer (#N/A); a ticket, or another of the
 * same load, whose weights are missing or disagree is refused (#VALUE!), because a paper leaves the house.
 */
export function paperFacts(
  book: Book,
  ticket: string,
  day: DaySerial | undefined = newestDay(book),
): PaperFacts {
  const tickets = day === undefined ? [] : toteTickets(book, day);
  const found = tickets.find(
    ({ row }) => sameName(row.ticket) === sameName(ticket),
  );
  if (!found) {
    const last = tickets.at(-1)?.row.ticket;
    throw unanswerable(
      `ticket: no tote ${ticket} has left by that day${last === undefined ? "" : `; the newest is ${last}`}`,
    );
  }
  const bill = found.row.billOfLading;
  return {
    farm: setting(book, "Farm") ?? "",
    ticket: forPaper(found),
    load:
      bill === undefined
        ? []
        : tickets
            .filter(
              ({ row }) =>
                row.billOfLading !== undefined &&
                sameName(row.billOfLading) === sameName(bill),
            )
            .map(forPaper),
  };
}

function forPaper(ticket: ToteTicket): PaperTicket {
  const { row, net } = ticket;
  if (net === undefined)
    throw unusable(
      `${row.place}: ${row.ticket} has gross ${poundsText(row.gross)} lb and tare ${poundsText(row.tare)} lb, which leaves no net; correct the row first`,
    );
  // Half a pound is what whole pounds may be rounded by.
  if (Math.abs(net - row.net) > HALF_A_POUND)
    throw unusable(
      `${row.place}: gross less tare of ${row.ticket} is ${poundsText(net)} lb, but Net lb says ${poundsText(row.net)}; correct the row first`,
    );
  return { ...ticket, net, lots: sourceLots(row.sourceLots) };
}

const HALF_A_POUND = 0.5 * 0.45359237;
