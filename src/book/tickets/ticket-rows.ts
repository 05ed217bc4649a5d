import { withoutNoise } from "../../measures/exact";
import type { Kilograms } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { bookTables } from "../book";
import { columnAt } from "../contents";
import type { ReadyTicket } from "./check-ticket";

type Row = Readonly<Record<string, number | string>>;

const inPounds = (weight: Kilograms): number =>
  withoutNoise(weight / KG_PER_LB);

/** A ticket as a row of Tote shipments, under the table's own headings; columns it does not have are left out. */
export function shipmentRow(
  ticket: ReadyTicket,
  headings: readonly string[],
): Row {
  const values: Readonly<Record<string, number | string | undefined>> = {
    ticket: ticket.ticket,
    shipped: ticket.shipped,
    contract: ticket.contract.contract,
    customer: ticket.contract.customer,
    billOfLading: ticket.billOfLading,
    gross: inPounds(ticket.gross),
    tare: inPounds(ticket.tare),
    net: inPounds(ticket.net),
    brix: ticket.brix,
    amount: ticket.amount,
    currency: ticket.currency,
    plateLimit:
      ticket.plateLimit === undefined ? undefined : inPounds(ticket.plateLimit),
    sourceLots:
      ticket.lots.length === 0
        ? undefined
        : ticket.lots
            .map(({ lot, weight }) =>
              weight === undefined ? lot : `${lot}:${inPounds(weight)}`,
            )
            .join("; "),
  };
  return Object.fromEntries(
    spelledHeadings(headings).flatMap(([key, heading]) => {
      const value = values[key];
      return value === undefined ? [] : [[heading, value] as const];
    }),
  );
}

const spelled = new WeakMap<
  readonly string[],
  readonly (readonly [key: string, heading: string])[]
>();

/** How a table spells its headings, by our column; found once for all the rows that go into it. */
function spelledHeadings(
  headings: readonly string[],
): readonly (readonly [key: string, heading: string])[] {
  const known = spelled.get(headings);
  if (known) return known;
  const found = Object.entries(bookTables.toteShipments.columns).flatMap(
    ([key, column]) => {
      const heading = headings[columnAt(headings, column)];
      return heading === undefined ? [] : [[key, heading] as const];
    },
  );
  spelled.set(headings, found);
  return found;
}

/** The draws of a ticket as rows of Lot use; none of lots whose pounds are not known. */
export const lotUseRows = (ticket: ReadyTicket): readonly Row[] => {
  const { date, from, what, to, pounds } = bookTables.lotUse.columns;
  return ticket.lots.flatMap(({ lot, weight }) =>
    weight === undefined
      ? []
      : [
          {
            [date.heading]: ticket.shipped,
            [from.heading]: lot,
            [what.heading]: "tote sale",
            [to.heading]: ticket.ticket,
            [pounds.heading]: inPounds(weight),
          },
        ],
  );
};
