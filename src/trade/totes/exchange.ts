import { amountInCents, toCents } from "../../measures/money";
import type { DaySerial, Money } from "../../measures/quantity";
import type { Invoice, Receipt } from "./account";

/** What one unit of a money is worth in the books' own on a day; undefined where no rate is known. */
export type Worth = (currency: string, day: DaySerial) => number | undefined;

/** An invoice in another money than the books', in both. */
export interface ExchangedInvoice {
  readonly invoice: Invoice;
  /** In the books' money at the rate of the invoice's day; undefined without one. */
  readonly booked: Money | undefined;
  /** In its own money. */
  readonly received: Money;
  /** What was received, each receipt at the rate of its own day. */
  readonly settled: Money | undefined;
  /** What the change of the rate brought between the invoice and its receipts; a loss is below 0. */
  readonly gain: Money | undefined;
  /** Days for which no rate is known. */
  readonly without: readonly DaySerial[];
}

export interface Exchanged {
  readonly invoices: readonly ExchangedInvoice[];
  /** Sums of what could be converted only. */
  readonly booked: Money;
  readonly gain: Money;
  /** Bills left out of the sums because a rate is missing. */
  readonly leftOut: readonly string[];
}

/**
 * Invoices in other moneys than the books', each at the rate of its own day, and their receipts at theirs: what the sale
 * was worth and what the rate did afterwards are two figures. Without a rate nothing is converted and the bill is named.
 * A receipt counts for the invoice it names, when buyer and money are the invoice's own.
 */
export function exchanged(
  invoices: readonly Invoice[],
  receipts: readonly Receipt[],
  own: string,
  worth: Worth,
): Exchanged {
  const rows = invoices
    .filter(({ currency }) => currency !== own)
    .map((invoice) => exchangedInvoice(invoice, receipts, worth));
  const sum = (amounts: readonly (Money | undefined)[]): Money =>
    toCents(amounts.reduce<number>((all, amount) => all + (amount ?? 0), 0));
  const whole = rows.filter(({ without }) => without.length === 0);
  return {
    invoices: rows,
    booked: sum(whole.map(({ booked }) => booked)),
    gain: sum(whole.map(({ gain }) => gain)),
    leftOut: rows
      .filter(({ without }) => without.length > 0)
      .map(({ invoice }) => invoice.bill),
  };
}

function exchangedInvoice(
  invoice: Invoice,
  receipts: readonly Receipt[],
  worth: Worth,
): ExchangedInvoice {
  const { bill, buyer, currency, day, amount } = invoice;
  const own = receipts.filter(
    (receipt) =>
      receipt.bill === bill &&
      receipt.buyer === buyer &&
      receipt.currency === currency,
  );
  const days = [day, ...own.map((receipt) => receipt.day)];
  const without = [...new Set(days)].filter(
    (one) => worth(currency, one) === undefined,
  );
  const at = (money: number, on: DaySerial): Money | undefined => {
    const each = worth(currency, on);
    return each === undefined ? undefined : amountInCents([money, each]);
  };
  const received = toCents(own.reduce((all, one) => all + one.amount, 0));
  const parts = own.map((one) => at(one.amount, one.day));
  const settled = parts.includes(undefined)
    ? undefined
    : toCents(parts.reduce<number>((all, part) => all + (part ?? 0), 0));
  const then = at(received, day);
  return {
    invoice,
    booked: at(amount, day),
    received,
    settled,
    gain:
      settled === undefined || then === undefined
        ? undefined
        : toCents(settled - then),
    without,
  };
}
