import { toCents } from "../../measures/money";
import { as, type DaySerial, type Money } from "../../measures/quantity";
import { accountKey, type Invoice, type Receipt } from "./account";
import { type AgeBand, ageBand, ageBands, daysLate } from "./ageing";
import { type AppliedReceipts, type Matching, applied } from "./matching";

export interface AgedInvoice extends Invoice {
  readonly paid: Money;
  /** Still owed, never below 0. */
  readonly balance: Money;
  /** Paid beyond the amount: a credit that settles no other invoice by itself. */
  readonly overpaid: Money;
  readonly daysLate: number;
  /** Of what is owed; undefined when nothing is. */
  readonly band: AgeBand | undefined;
}

/** What a buyer owes in one money. */
export interface BuyerAccount {
  readonly buyer: string;
  readonly currency: string;
  readonly balance: Money;
  readonly byBand: Readonly<Record<AgeBand, Money>>;
  readonly late: readonly AgedInvoice[];
  /** Over-payments, which we owe the buyer. */
  readonly credits: Money;
  /** Receipts set against no invoice. */
  readonly unapplied: Money;
}

export interface Receivables {
  readonly invoices: readonly AgedInvoice[];
  readonly unapplied: AppliedReceipts["unapplied"];
  /** In order of first appearance; a buyer with two moneys has two accounts. */
  readonly accounts: readonly BuyerAccount[];
}

/**
 * Who owes what on a day. Two moneys are never added, an over-payment is kept apart from what else the buyer owes, and a
 * receipt is set against another buyer's invoice by nobody. Bills and buyers are matched to the letter.
 */
export function receivables(
  invoices: readonly Invoice[],
  receipts: readonly Receipt[],
  day: DaySerial,
  matching: Matching = "by hand",
): Receivables {
  const known = invoices.filter((invoice) => invoice.day <= day);
  const came = receipts.filter((receipt) => receipt.day <= day);
  const { paid, unapplied } = applied(known, came, matching);
  const aged = known.map((invoice, i) =>
    agedInvoice(invoice, paid[i] ?? 0, day),
  );
  return { invoices: aged, unapplied, accounts: accounts(aged, unapplied) };
}

function agedInvoice(
  invoice: Invoice,
  received: number,
  day: DaySerial,
): AgedInvoice {
  const paid = toCents(received);
  const open = toCents(invoice.amount - paid);
  const balance = as<Money>(Math.max(0, open));
  // Field by field: over many thousands of invoices a spread takes longer than all the sums.
  return {
    bill: invoice.bill,
    buyer: invoice.buyer,
    currency: invoice.currency,
    day: invoice.day,
    due: invoice.due,
    amount: invoice.amount,
    paid,
    balance,
    overpaid: as<Money>(Math.max(0, -open)),
    daysLate: daysLate(invoice.due, day, balance),
    band: balance > 0 ? ageBand(invoice.due, day) : undefined,
  };
}

interface Sums {
  readonly buyer: string;
  readonly currency: string;
  readonly byBand: Record<AgeBand, number>;
  readonly late: AgedInvoice[];
  credits: number;
  unapplied: number;
}

function accounts(
  invoices: readonly AgedInvoice[],
  unapplied: AppliedReceipts["unapplied"],
): readonly BuyerAccount[] {
  const all = new Map<string, Sums>();
  const of = (buyer: string, currency: string): Sums => {
    const key = accountKey({ buyer, currency });
    const known = all.get(key);
    if (known) return known;
    const fresh = emptySums(buyer, currency);
    all.set(key, fresh);
    return fresh;
  };
  for (const invoice of invoices) {
    const sums = of(invoice.buyer, invoice.currency);
    sums.credits += invoice.overpaid;
    if (invoice.band === undefined) continue;
    sums.byBand[invoice.band] += invoice.balance;
    if (invoice.daysLate > 0) sums.late.push(invoice);
  }
  for (const { receipt, left } of unapplied)
    of(receipt.buyer, receipt.currency).unapplied += left;
  return [...all.values()].map(
    ({ byBand, credits, unapplied: free, ...rest }) => {
      const bands = Object.fromEntries(
        ageBands.map((band) => [band, toCents(byBand[band])]),
      ) as Record<AgeBand, Money>;
      return {
        ...rest,
        byBand: bands,
        balance: toCents(ageBands.reduce((sum, band) => sum + bands[band], 0)),
        credits: toCents(credits),
        unapplied: toCents(free),
      };
    },
  );
}

const emptySums = (buyer: string, currency: string): Sums => ({
  buyer,
  currency,
  byBand: { "not due": 0, "1-30": 0, "31-60": 0, "61-90": 0, "over 90": 0 },
  late: [],
  credits: 0,
  unapplied: 0,
});
