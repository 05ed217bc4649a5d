import { toCents } from "../measures/money";
import {
  as,
  type DaySerial,
  type Kilograms,
  type Money,
} from "../measures/quantity";
import {
  contractProgress,
  type ContractProgress,
  type ShippedTote,
} from "../trade/totes/contract-progress";
import type { Book, BookRow } from "./book";
import { sameName } from "./keys";
import { priceBases } from "./price-bases";
import { contractFreight, type ContractFreight } from "./contract-freight";
import type { ToteTicket } from "./tote-tickets";

export interface ToteContract {
  readonly row: BookRow<"toteContracts">;
  readonly progress: ContractProgress;
  readonly currency: string;
  /** Sum of its tickets' amounts, in its own money. */
  readonly amount: Money;
  readonly freight: ContractFreight;
}

/** How far every contract has come. A tote without a net weight counts for nothing and is named by its ticket. */
export function toteContracts(
  book: Book,
  tickets: readonly ToteTicket[],
  day: DaySerial,
): readonly ToteContract[] {
  const byContract = new Map<string, ToteTicket[]>();
  for (const ticket of tickets) {
    if (ticket.net === undefined) continue;
    const own = byContract.get(sameName(ticket.row.contract)) ?? [];
    own.push(ticket);
    byContract.set(sameName(ticket.row.contract), own);
  }
  const all = tickets.flatMap(({ net }) => (net === undefined ? [] : [net]));
  const usual =
    all.length === 0
      ? undefined
      : as<Kilograms>(all.reduce<number>((a, b) => a + b, 0) / all.length);
  return book.toteContracts.map((row) => {
    const own = byContract.get(sameName(row.contract)) ?? [];
    const progress = contractProgress(row, own.flatMap(shipped), day, usual);
    return {
      row,
      progress,
      currency: priceBases[row.basis].currency,
      amount: toCents(own.reduce((sum, { amount }) => sum + (amount ?? 0), 0)),
      freight: contractFreight(book, row, progress.meanBrix),
    };
  });
}

const shipped = ({ net, row }: ToteTicket): readonly ShippedTote[] =>
  net === undefined ? [] : [{ net, brix: row.brix }];
