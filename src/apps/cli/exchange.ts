import { booksMoney, worthIn } from "../../book/exchange-rate";
import { readBook } from "../../book/read";
import { accountsOf } from "../../book/tote-receivables";
import { isoDate } from "../../measures/read-date";
import { type ExchangedInvoice, exchanged } from "../../trade/totes/exchange";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";

const USAGE = "npm run -s exchange -- BOOK [--json]";

/** What `exchange --json` answers; an amount that has no rate is null and named. */
export interface ExchangeAnswer {
  readonly money: string;
  readonly invoices: readonly {
    readonly bill: string;
    readonly buyer: string;
    readonly day: string;
    readonly currency: string;
    readonly amount: number;
    readonly booked: number | null;
    readonly received: number;
    readonly settled: number | null;
    readonly gain: number | null;
    readonly withoutRate: readonly string[];
  }[];
  readonly booked: number;
  readonly gain: number;
  readonly leftOut: readonly string[];
}

/** Invoices in another money: each at the rate of its own day, with what the rate did until they were paid apart. */
export const exchange: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    { json: { type: "boolean", default: false } },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  const { book } = readBook((await readBookFiles(place)).contents);
  const { invoices, receipts } = accountsOf(book);
  const money = booksMoney(book);
  const found = exchanged(invoices, receipts, money, worthIn(book));
  const answer: ExchangeAnswer = {
    money,
    ...found,
    invoices: found.invoices.map(answerOf),
  };
  if (values.json) terminal.say(JSON.stringify(answer));
  else
    for (const line of said(answer, book.exchangeRates.length > 0))
      terminal.say(line);
  return 0;
};

const answerOf = ({
  invoice,
  booked,
  received,
  settled,
  gain,
  without,
}: ExchangedInvoice): ExchangeAnswer["invoices"][number] => ({
  bill: invoice.bill,
  buyer: invoice.buyer,
  day: isoDate(invoice.day),
  currency: invoice.currency,
  amount: invoice.amount,
  booked: booked ?? null,
  received,
  settled: settled ?? null,
  gain: gain ?? null,
  withoutRate: without.map(isoDate),
});

function said(answer: ExchangeAnswer, isDated: boolean): readonly string[] {
  const { money, invoices, booked, gain, leftOut } = answer;
  if (invoices.length === 0) return [`Every invoice is in ${money}.`];
  return [
    isDated
      ? "Each amount goes by the rate of its own day, in Exchange rates."
      : "The book keeps no dated rates: every amount goes by the one rate in Settings, so no gain or loss shows.",
    ...invoices.map((one) =>
      one.withoutRate.length > 0
        ? `  ${one.bill} ${one.buyer}, ${one.day}: ${one.currency} ${text(one.amount)}, not converted and in no sum: no rate on ${one.withoutRate.join(", ")}`
        : `  ${one.bill} ${one.buyer}, ${one.day}: ${one.currency} ${text(one.amount)} = ${money} ${text(one.booked ?? 0)}; received ${one.currency} ${text(one.received)} = ${money} ${text(one.settled ?? 0)}, ${gainText(one.gain ?? 0, money)}`,
    ),
    `Sold: ${money} ${text(booked)}. Exchange: ${gainText(gain, money)}.`,
    ...(leftOut.length === 0
      ? []
      : [`Left out of both for want of a rate: ${leftOut.join(", ")}.`]),
  ];
}

const gainText = (gain: number, money: string): string =>
  gain === 0
    ? "no gain or loss"
    : `a ${gain > 0 ? "gain" : "loss"} of ${money} ${text(Math.abs(gain))}`;

const text = (amount: number): string =>
  amount.toLocaleString("en-US", {
    minimumFractionDigits: 2,
    maximumFractionDigits: 2,
  });
