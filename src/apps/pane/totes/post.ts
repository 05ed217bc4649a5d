import { lotUseRows, shipmentRow } from "../../../book/tickets/ticket-rows";
import type { ReadyTicket } from "../../../book/tickets/check-ticket";
import { postedTickets } from "../../../book/tickets/ticket-facts";
import { bookTables } from "../../../book/book";
import { contentsOf } from "../../../book/contents";
import { listed } from "../../../book/finding";
import { sameName } from "../../../book/keys";
import type { Change, Host, TableContents } from "../../../hosts/host";
import { unusable } from "../../../measures/cannot-answer";

const waiting = new WeakMap<Host, Promise<void>>();

/**
 * Posts tickets as one change, all or nothing, one post after the other. The workbook is looked at once more just before:
 * a ticket posted meanwhile, or a table that is gone, is refused with a sentence and nothing is written.
 */
export function postTickets(
  host: Host,
  tickets: readonly ReadyTicket[],
): Promise<void> {
  const before = waiting.get(host) ?? Promise.resolve();
  const post = before.then(async () => {
    await host.apply(ticketsChange(tickets, await host.readTables()));
  });
  waiting.set(
    host,
    post.catch(() => undefined),
  );
  return post;
}

/** The rows that tickets add to Tote shipments and, for lots whose pounds are known, to Lot use. */
export function ticketsChange(
  tickets: readonly ReadyTicket[],
  tables: readonly TableContents[],
): Change {
  const { toteShipments, lotUse } = bookTables;
  const shipments = contentsOf(tables, toteShipments);
  if (!shipments)
    throw unusable(
      `The table ${toteShipments.name} is no longer in this workbook, so nothing was written; undo its deletion and post again`,
    );
  const posted = postedTickets(tables);
  const again = tickets.filter(({ ticket }) => posted.has(sameName(ticket)));
  if (again.length > 0)
    throw unusable(
      `${listed(again.map(({ ticket }) => ticket))} ${again.length === 1 ? "was" : "were"} posted meanwhile, so nothing was written; look at the list again`,
    );
  const draws = tickets.flatMap(lotUseRows);
  if (draws.length > 0 && !contentsOf(tables, lotUse))
    throw unusable(
      `The table ${lotUse.name} is no longer in this workbook, so nothing was written; undo its deletion and post again`,
    );
  return {
    says:
      tickets.length === 1
        ? `ticket ${tickets[0]?.ticket ?? ""}`
        : `${tickets.length} tickets`,
    append: [
      {
        table: shipments.name,
        rows: tickets.map((ticket) => shipmentRow(ticket, shipments.headings)),
      },
      ...(draws.length > 0
        ? [
            {
              table: contentsOf(tables, lotUse)?.name ?? lotUse.name,
              rows: draws,
            },
          ]
        : []),
    ],
    addSheets: [],
    names: [],
  };
}
