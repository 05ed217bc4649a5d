import { toCents } from "../../measures/money";
import type { DaySerial, Money } from "../../measures/quantity";
import { accountKey, type Invoice, type Receipt } from "./account";

export interface StatementLine {
  readonly day: DaySerial;
  readonly kind: "invoice" | "receipt";
  /** The bill of lading, or the receipt's own number. */
  readonly number: string;
  /** The invoice a receipt pays. */
  readonly pays: string | undefined;
  /** Positive for an invoice, negative for a receipt. */
  readonly amount: Money;
  /** What the buyer owes after this line; below 0 we owe the buyer. */
  readonly balance: Money;
}

/** One buyer's account in one money from the first day to `day`: invoices before receipts of the same day. */
export function statement(
  account: { readonly buyer: string; readonly currency: string },
  invoices: readonly Invoice[],
  receipts: readonly Receipt[],
  day: DaySerial,
): readonly StatementLine[] {
  const isOwn = (of: Invoice | Receipt): boolean =>
    of.day <= day && accountKey(of) === accountKey(account);
  const lines = [
    ...invoices.filter(isOwn).map((invoice) => ({
      day: invoice.day,
      kind: "invoice" as const,
      number: invoice.bill,
      pays: undefined,
      amount: invoice.amount,
    })),
    ...receipts.filter(isOwn).map((receipt) => ({
      day: receipt.day,
      kind: "receipt" as const,
      number: receipt.receipt,
      pays: receipt.bill,
      amount: toCents(-receipt.amount),
    })),
  ].sort((a, b) => a.day - b.day);
  let balance = toCents(0);
  return lines.map((line) => {
    balance = toCents(balance + line.amount);
    return { ...line, balance };
  });
}
