import type { Block } from "../model";
import {
  column,
  day,
  money,
  numberAt,
  quiet,
  quietMoney,
  type Reference,
  textAt,
} from "./columns";
import type { ToteFacts } from "./facts";

/** Every receipt and what it was set against. */
export const receiptsBlock = (
  facts: ToteFacts,
  register: Reference,
  statement: Reference,
): Block => {
  const own = (key: Parameters<typeof facts.column<"payments">>[1]): string =>
    facts.column("payments", key);
  const asOf = register("as_of");
  const ofInvoice = (name: string): string =>
    `INDEX({invoices.${name}},{row.invoice_row})`;
  return {
    kind: "table",
    name: "receipts",
    title: "Receipts",
    rows: facts.receipts,
    columns: [
      column("receipt", "Receipt", textAt(own("receipt"))),
      column("buyer", "Buyer", textAt(own("customer"))),
      column("date", "Paid on", numberAt(own("paidOn")), day),
      column("bill", "For invoice", textAt(own("billOfLading"))),
      column("amount", "Amount", numberAt(own("amount")), money),
      column("currency", "Money", textAt(own("currency"))),
      column("state", "What it pays", state(register)),
      column(
        "counts",
        "Counts",
        `IF({row.receipt}="","",IF(AND(ISNUMBER({row.date}),ISNUMBER({row.amount})),IF({row.date}<=${asOf},"yes","no"),"no"))`,
      ),
      column(
        "known",
        "Amount that counts",
        'IF({row.counts}="yes",{row.amount},0)',
        quietMoney,
      ),
      column(
        "invoice_row",
        "Invoice, row",
        'IF(AND({row.counts}="yes",{row.bill}<>""),IFERROR(MATCH({row.bill},{invoices.bill},0),0),0)',
        quiet,
      ),
      column(
        "fits",
        "Same buyer and money",
        `IF({row.invoice_row}>0,IF(AND(${ofInvoice("buyer")}={row.buyer},${ofInvoice("currency")}={row.currency},${ofInvoice("counts")}="yes"),"yes","no"),"no")`,
      ),
      column(
        "free",
        "Names no invoice",
        'IF(AND({row.counts}="yes",{row.bill}=""),{row.amount},0)',
        quietMoney,
      ),
      column(
        "misfit",
        "Names one it cannot pay",
        'IF(AND({row.counts}="yes",{row.bill}<>"",{row.fits}="no"),{row.amount},0)',
        quietMoney,
      ),
      column(
        "in_statement",
        "Place in the statement",
        `IF(AND({row.counts}="yes",{row.buyer}=${statement("buyer")},{row.currency}=${statement("money")}),{row.date}+0.5+{n}/1000000,"")`,
        "0.000000",
      ),
    ],
  };
};

const state = (register: Reference): string =>
  `IF({row.counts}="yes",IF({row.bill}="",IF(${register("matching")}="oldest first","what has been due longest","unapplied: names no invoice"),IF({row.fits}="yes","its invoice",IF({row.invoice_row}=0,"unapplied: there is no invoice "&{row.bill},"unapplied: invoice "&{row.bill}&" is another buyer's, in another money or later"))),"")`;
