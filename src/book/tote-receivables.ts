import { toCents } from "../measures/money";
import type { DaySerial, Money } from "../measures/quantity";
import type { Invoice, Receipt } from "../trade/totes/account";
import type { Matching } from "../trade/totes/matching";
import { receivables, type Receivables } from "../trade/totes/receivables";
import type { Book } from "./book";
import { sameName } from "./keys";
import type { ToteTicket } from "./tote-tickets";

/** Invoices and receipts of the book, each buyer and bill in one spelling. */
export function accountsOf(book: Book): {
  readonly invoices: readonly Invoice[];
  readonly receipts: readonly Receipt[];
} {
  const spellings = new Map<string, string>();
  const one = (name: string): string => {
    const known = spellings.get(sameName(name));
    if (known !== undefined) return known;
    spellings.set(sameName(name), name.trim());
    return name.trim();
  };
  return {
    invoices: book.invoices.map((row) => ({
      bill: one(row.billOfLading),
      buyer: one(row.customer),
      currency: row.currency,
      day: row.date,
      due: row.due,
      amount: row.amount,
    })),
    receipts: book.payments.map((row) => ({
      receipt: row.receipt,
      buyer: one(row.customer),
      currency: row.currency,
      day: row.paidOn,
      amount: row.amount,
      bill: row.billOfLading === undefined ? undefined : one(row.billOfLading),
    })),
  };
}

export function bookReceivables(
  book: Book,
  day: DaySerial,
  matching: Matching,
): Receivables {
  const { invoices, receipts } = accountsOf(book);
  return receivables(invoices, receipts, day, matching);
}

/** A bill of lading that has no invoice yet: what it comes to, and when it falls due. */
export interface BillToInvoice {
  readonly bill: string;
  readonly buyer: string;
  readonly currency: string;
  readonly day: DaySerial;
  readonly due: DaySerial | undefined;
  readonly totes: number;
  readonly amount: Money;
}

/** Totes that left and were never invoiced, by bill of lading and money. A tote that cannot be billed keeps its bill out. */
export function billsToInvoice(
  book: Book,
  tickets: readonly ToteTicket[],
): readonly BillToInvoice[] {
  const invoiced = new Set(
    book.invoices.map(({ billOfLading }) => sameName(billOfLading)),
  );
  const open = new Map<string, ToteTicket[]>();
  for (const ticket of tickets) {
    const bill = sameName(ticket.row.billOfLading ?? ticket.row.ticket);
    if (invoiced.has(bill)) continue;
    const own = open.get(`${bill}\u0000${ticket.currency ?? ""}`) ?? [];
    own.push(ticket);
    open.set(`${bill}\u0000${ticket.currency ?? ""}`, own);
  }
  return [...open.values()].flatMap((own) => {
    const [first] = own;
    if (!first || own.some(({ amount }) => amount === undefined)) return [];
    const { row, contract, buyer, currency } = first;
    return [
      {
        bill: row.billOfLading ?? row.ticket,
        buyer,
        currency: currency ?? "",
        day: row.shipped,
        due:
          contract?.paymentDays === undefined
            ? undefined
            : ((row.shipped + contract.paymentDays) as DaySerial),
        totes: own.length,
        amount: toCents(
          own.reduce((sum, { amount }) => sum + (amount ?? 0), 0),
        ),
      },
    ];
  });
}
