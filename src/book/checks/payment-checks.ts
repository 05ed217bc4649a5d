import { isoDate } from "../../measures/read-date";
import type { Book, BookRow } from "../book";
import { newestDay } from "../newest-day";
import { type Finding, listed } from "../finding";
import { isSameName, sameName } from "../keys";
import { setting } from "../setting";
import { gathered, moneyText } from "./gathered";

/** Who still owes us, who paid too much, and payments that fit no invoice. Each money is kept apart. */
export function paymentChecks(book: Book): readonly Finding[] {
  const today = newestDay(book);
  const open = book.invoices
    .map((invoice) => ({ ...invoice, balance: balanceOf(book, invoice) }))
    .filter(({ balance }) => Math.abs(balance) > 0.005);
  const invoices = new Map(
    book.invoices.map((row) => [sameName(row.billOfLading), row]),
  );
  return [
    ...gathered(
      open.filter(
        ({ balance, due }) => balance > 0 && today !== undefined && due < today,
      ),
      {
        column: "Due date",
        found: (rows) =>
          `unpaid after the due date: ${listed(rows.map((row) => `${row.billOfLading} ${row.customer} ${moneyText(row.balance, row.currency)}`))}`,
        meaning: `the due date had passed on ${today === undefined ? "the book's day" : isoDate(today)}`,
        todo: "remind the customer, or enter the payment or the credit",
        atStake: (rows) => inBooksMoney(book, rows),
      },
    ),
    ...gathered(
      open.filter(({ balance }) => balance < 0),
      {
        column: "Amount",
        found: (rows) =>
          `paid too much: ${listed(rows.map((row) => `${row.billOfLading} ${row.customer} ${moneyText(-row.balance, row.currency)}`))}`,
        meaning: "we owe the customer this money; it settles no other invoice",
        todo: "send it back, or agree a credit",
        atStake: (rows) => inBooksMoney(book, rows),
      },
    ),
    ...gathered(
      book.payments.filter((row) => {
        const invoice =
          row.billOfLading === undefined
            ? undefined
            : invoices.get(sameName(row.billOfLading));
        return (
          row.billOfLading === undefined ||
          (invoice !== undefined &&
            (sameName(invoice.customer) !== sameName(row.customer) ||
              invoice.currency !== row.currency))
        );
      }),
      {
        column: "Bill of lading",
        found: (rows) =>
          `payments of another customer, in another money or for no invoice: ${listed(rows.map((row) => row.receipt))}`,
        meaning: "the money is not set against any invoice",
        todo: "enter the invoice that was really paid",
      },
    ),
  ];
}

/** What of it is in the books' own money; amounts in another are never added to it. */
function inBooksMoney(
  book: Book,
  rows: readonly { readonly balance: number; readonly currency: string }[],
): number | undefined {
  const money = setting(book, "Books money");
  const own = rows.filter(({ currency }) => currency === money);
  return own.length === 0
    ? undefined
    : own.reduce((sum, { balance }) => sum + Math.abs(balance), 0);
}

/** What is left to pay of an invoice, counting only its own customer's payments in its own money. */
const balanceOf = (book: Book, invoice: BookRow<"invoices">): number =>
  book.payments
    .filter(
      (row) =>
        row.billOfLading !== undefined &&
        isSameName(row.billOfLading, invoice.billOfLading) &&
        isSameName(row.customer, invoice.customer) &&
        row.currency === invoice.currency,
    )
    .reduce<number>((left, row) => left - row.amount, invoice.amount);
