import { bookTables, type Book } from "../../../book/book";
import { columnAt, contentsOf } from "../../../book/contents";
import { isSameName } from "../../../book/keys";
import { readWrittenNumber } from "../../../book/ledger/written-number";
import { datesWritten } from "../../../book/ledger/written-date";
import type { Change, TableContents } from "../../../hosts/host";
import { unusable } from "../../../measures/cannot-answer";
import { isoDate } from "../../../measures/read-date";
import type { DaySerial } from "../../../measures/quantity";
import type { Totes } from "../../../book/totes";
import { moneyIn } from "./money-in";

/** A receipt as typed. */
export interface TypedPayment {
  readonly account: string;
  readonly bill: string;
  readonly amount: string;
  readonly paidOn: string;
  readonly note: string;
}

/** A buyer's account in one money, by a text that can be chosen from a list. */
export const accountKey = (of: {
  readonly buyer: string;
  readonly currency: string;
}): string => `${of.buyer} · ${of.currency}`;

export interface PlannedPayment {
  readonly change: Change;
  readonly receipt: string;
  /** What a person should know before it is written. */
  readonly notes: readonly string[];
}

/** The receipt's row, or a sentence about what is missing. Money for no invoice stays unapplied and is said to. */
export function plannedPayment(
  typed: TypedPayment,
  book: Book,
  totes: Totes,
  tables: readonly TableContents[],
): PlannedPayment {
  const table = contentsOf(tables, bookTables.payments);
  if (!table)
    throw unusable(
      `The table ${bookTables.payments.name} is not in this workbook, so a payment cannot be written`,
    );
  const account = totes.receivables.accounts.find(
    (one) => accountKey(one) === typed.account,
  );
  if (!account) throw unusable("Choose who paid");
  const amount = readWrittenNumber(typed.amount);
  if (!amount || amount.value <= 0)
    throw unusable(
      typed.amount.trim() === ""
        ? "Type the amount that came"
        : `"${typed.amount}" is not an amount`,
    );
  const paidOn = dayOf(typed.paidOn);
  const invoice = totes.receivables.invoices.find(
    ({ bill, buyer, currency }) =>
      bill === typed.bill &&
      buyer === account.buyer &&
      currency === account.currency,
  );
  const receipt = nextReceipt(book);
  const { columns } = bookTables.payments;
  const cells: Readonly<Record<string, string | number | undefined>> = {
    receipt,
    paidOn,
    customer: account.buyer,
    billOfLading: invoice?.bill,
    amount: amount.value,
    currency: account.currency,
    note: typed.note.trim() || undefined,
  };
  return {
    receipt,
    notes: [
      ...(amount.plain
        ? []
        : [
            `The amount is read as ${moneyIn(amount.value, account.currency)}.`,
          ]),
      ...(invoice === undefined
        ? [
            "It names no invoice, so it stays unapplied until you say what it pays.",
          ]
        : amount.value > invoice.balance
          ? [
              `That is ${moneyIn(amount.value - invoice.balance, account.currency)} more than is owed on ${invoice.bill}; the rest becomes a credit.`,
            ]
          : []),
    ],
    change: {
      says: `receipt ${receipt}`,
      append: [
        {
          table: table.name,
          rows: [
            Object.fromEntries(
              Object.entries(columns).flatMap(([key, column]) => {
                const heading =
                  table.headings[columnAt(table.headings, column)];
                const value = cells[key];
                return heading === undefined || value === undefined
                  ? []
                  : [[heading, value]];
              }),
            ),
          ],
        },
      ],
      addSheets: [],
      names: [],
    },
  };
}

function dayOf(text: string): DaySerial {
  const days = datesWritten(text);
  const [day, other] = days;
  if (day === undefined)
    throw unusable(
      text.trim() === ""
        ? "Type the day the money came"
        : `"${text}" is not a date; type it as 2026-11-25`,
    );
  if (other !== undefined)
    throw unusable(
      `"${text}" can be ${isoDate(day)} or ${isoDate(other)}; type the one you mean`,
    );
  return day;
}

/** The number after the book's last, in its own pattern: PAY-024 after PAY-023. */
export function nextReceipt({ payments }: Pick<Book, "payments">): string {
  const last = payments.at(-1)?.receipt ?? "PAY-000";
  const found = /^(.*?)(\d+)$/.exec(last);
  const [front, digits] = found
    ? [found[1] ?? "", found[2] ?? "0"]
    : [`${last}-`, "0"];
  for (let number = Number(digits) + 1; ; number += 1) {
    const name = `${front}${String(number).padStart(digits.length, "0")}`;
    if (!payments.some(({ receipt }) => isSameName(receipt, name))) return name;
  }
}
