import { toCents } from "../../measures/money";
import type { DaySerial } from "../../measures/quantity";
import { serialOf } from "../../measures/read-date";
import type { Book } from "../book";
import { setting } from "../setting";
import { toteContracts } from "../tote-contracts";
import { billsToInvoice, bookReceivables } from "../tote-receivables";
import { toteTickets } from "../tote-tickets";
import { balancePounds, lotBalances } from "../totes-lots";

/** One figure that a season hands on to the next. */
export interface Balance {
  readonly what: string;
  readonly name: string;
  readonly unit: string;
  readonly amount: number;
}

/** The last day of the season before this one; a season is a calendar year. */
export const closingDay = (season: number): DaySerial =>
  serialOf(season - 1, 12, 31);

/**
 * What a book holds, is owed and owes on a day: the closing figures of a season from its book, the opening ones from the
 * next. Figures of nothing are left out, so that a used-up lot and a lot that is not listed are the same.
 */
export function balancesOf(book: Book, day: DaySerial): readonly Balance[] {
  return [
    ...syrup(book, day),
    ...money(book, day),
    ...totesOut(book, day),
    ...promised(book, day),
    ...book.parts.flatMap(({ part, onHand }) =>
      onHand === undefined
        ? []
        : [balance("Part on hand", part, "pieces", onHand)],
    ),
  ].filter(({ amount }) => amount !== 0);
}

const syrup = (book: Book, day: DaySerial): readonly Balance[] =>
  lotBalances(book, day).map(({ kind, name, left }) =>
    balance(
      kind === "lot" ? "Left of lot" : "Left in barrel",
      name,
      "lb",
      balancePounds(left),
    ),
  );

function money(book: Book, day: DaySerial): readonly Balance[] {
  const bills = new Map<string, Balance>();
  for (const { bill, buyer, currency, amount } of billsToInvoice(
    book,
    toteTickets(book, day),
  )) {
    const name = `${buyer}, ${bill}`;
    const known = bills.get(name)?.amount ?? 0;
    bills.set(
      name,
      balance("Sent and not invoiced", name, currency, toCents(known + amount)),
    );
  }
  return [
    ...bookReceivables(book, day, "by hand").accounts.flatMap(
      ({ buyer, currency, balance: owed, credits, unapplied }) => [
        balance("Owed by", buyer, currency, owed),
        balance("Paid too much by", buyer, currency, credits),
        balance(
          "Received, not set against an invoice, from",
          buyer,
          currency,
          unapplied,
        ),
      ],
    ),
    ...bills.values(),
  ];
}

function totesOut(book: Book, day: DaySerial): readonly Balance[] {
  const out = toteTickets(book, day).filter(({ isOut }) => isOut);
  return [
    balance("Totes out with buyers", "all", "totes", out.length),
    balance(
      "Deposits on them",
      "all",
      setting(book, "Books money") ?? "USD",
      toCents(out.reduce((sum, { row }) => sum + (row.deposit ?? 0), 0)),
    ),
  ];
}

const promised = (book: Book, day: DaySerial): readonly Balance[] =>
  toteContracts(book, toteTickets(book, day), day)
    .filter(({ row }) => row.end >= day)
    .map(({ row, progress }) =>
      balance(
        "Left to send on contract",
        row.contract,
        "lb",
        balancePounds(progress.left),
      ),
    );

const balance = (
  what: string,
  name: string,
  unit: string,
  amount: number,
): Balance => ({ what, name, unit, amount });
