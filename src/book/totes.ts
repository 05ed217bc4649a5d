import { unanswerable } from "../measures/cannot-answer";
import { toCents } from "../measures/money";
import type { DaySerial, Money, Share } from "../measures/quantity";
import type { Matching } from "../trade/totes/matching";
import type { Receivables } from "../trade/totes/receivables";
import type { Book } from "./book";
import { newestDay } from "./newest-day";
import { setting } from "./setting";
import { toteContracts, type ToteContract } from "./tote-contracts";
import {
  billsToInvoice,
  type BillToInvoice,
  bookReceivables,
} from "./tote-receivables";
import { toteTickets, type ToteTicket } from "./tote-tickets";
import { weightDisputes, type WeightDisputes } from "./weight-disputes";

/** Everything about totes on one day. */
export interface Totes {
  readonly asOf: DaySerial;
  readonly tickets: readonly ToteTicket[];
  readonly contracts: readonly ToteContract[];
  readonly receivables: Receivables;
  readonly toInvoice: readonly BillToInvoice[];
  readonly totals: readonly MoneyTotals[];
  readonly deposits: ToteDeposits;
  readonly disputes: WeightDisputes;
}

/** Sums in one money; no figure here is ever added to one of another money. */
export interface MoneyTotals {
  readonly currency: string;
  /** Tickets' own amounts. */
  readonly sold: Money;
  readonly invoiced: Money;
  readonly received: Money;
  readonly balance: Money;
  readonly late: Money;
  readonly credits: Money;
  readonly unapplied: Money;
}

/** Totes that are out with buyers, and the deposits on them, in the books' money. */
export interface ToteDeposits {
  readonly currency: string;
  readonly totesOut: number;
  readonly amount: Money;
  readonly longestOut: number;
}

/** The tote register of a book on a day, by default its newest. Has no answer (#N/A) in a book without a date. */
export function totesOf(
  book: Book,
  asked: {
    readonly asOf?: DaySerial | undefined;
    readonly matching?: Matching;
    /** How far a buyer's weight may lie from ours, instead of the setting. */
    readonly tolerance?: Share | undefined;
  } = {},
): Totes {
  const asOf = asked.asOf ?? newestDay(book);
  if (asOf === undefined)
    throw unanswerable(
      "The book holds no date, so no day can be spoken of; enter what has happened, or give a day",
    );
  const tickets = toteTickets(book, asOf);
  const money = bookReceivables(book, asOf, asked.matching ?? "by hand");
  return {
    asOf,
    tickets,
    contracts: toteContracts(book, tickets, asOf),
    receivables: money,
    toInvoice: billsToInvoice(book, tickets),
    totals: totals(book, tickets, money, asOf),
    deposits: deposits(book, tickets),
    disputes: weightDisputes(book, tickets, asked.tolerance),
  };
}

function totals(
  book: Book,
  tickets: readonly ToteTicket[],
  { invoices, accounts, unapplied }: Receivables,
  day: DaySerial,
): readonly MoneyTotals[] {
  const received = book.payments.filter(({ paidOn }) => paidOn <= day);
  const currencies = new Set([
    ...tickets.flatMap(({ currency }) => currency ?? []),
    ...invoices.map(({ currency }) => currency),
    ...received.map(({ currency }) => currency),
  ]);
  return [...currencies].map((currency) => {
    const isOwn = (of: { readonly currency: string | undefined }): boolean =>
      of.currency === currency;
    const own = accounts.filter(isOwn);
    return {
      currency,
      sold: sum(tickets.filter(isOwn), ({ amount }) => amount ?? 0),
      invoiced: sum(invoices.filter(isOwn), ({ amount }) => amount),
      received: sum(received.filter(isOwn), ({ amount }) => amount),
      balance: sum(own, ({ balance }) => balance),
      late: sum(own, ({ late }) => sum(late, ({ balance }) => balance)),
      credits: sum(own, ({ credits }) => credits),
      unapplied: sum(
        unapplied.filter(({ receipt }) => isOwn(receipt)),
        ({ left }) => left,
      ),
    };
  });
}

function deposits(book: Book, tickets: readonly ToteTicket[]): ToteDeposits {
  const out = tickets.filter(({ isOut }) => isOut);
  return {
    currency: setting(book, "Books money") ?? "USD",
    totesOut: out.length,
    amount: sum(out, ({ row }) => row.deposit ?? 0),
    longestOut: out.reduce(
      (most, { daysOut }) => Math.max(most, daysOut ?? 0),
      0,
    ),
  };
}

const sum = <T>(all: readonly T[], of: (one: T) => number): Money =>
  toCents(all.reduce((total, one) => total + of(one), 0));
