import { ageBands } from "../../trade/totes/ageing";
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

/** Every invoice with what was received for it and how late it is. */
export const invoicesBlock = (
  facts: ToteFacts,
  register: Reference,
  statement: Reference,
): Block => {
  const own = (key: Parameters<typeof facts.column<"invoices">>[1]): string =>
    facts.column("invoices", key);
  const paid = (key: Parameters<typeof facts.column<"payments">>[1]): string =>
    facts.column("payments", key);
  const asOf = register("as_of");
  const ofAccount =
    "{invoices.buyer},{row.buyer},{invoices.currency},{row.currency}";
  return {
    kind: "table",
    name: "invoices",
    title: "Invoices",
    rows: facts.invoices,
    columns: [
      column("bill", "Invoice", textAt(own("billOfLading"))),
      column("buyer", "Buyer", textAt(own("customer"))),
      column("date", "Invoiced on", numberAt(own("date")), day),
      column("due", "Due on", numberAt(own("due")), day),
      column("amount", "Amount", numberAt(own("amount")), money),
      column("currency", "Money", textAt(own("currency"))),
      column(
        "paid",
        "Received",
        'IF({row.counts}="yes",ROUND({row.by_name}+{row.from_free},2),"")',
        money,
      ),
      column(
        "balance",
        "Owed",
        'IF({row.counts}="yes",ROUND({row.open}-{row.from_free},2),"")',
        money,
      ),
      column(
        "days_late",
        "Days late",
        `IF({row.counts}="yes",IF(AND({row.balance}>0,ISNUMBER({row.due})),SYRUP.DAYS_LATE({row.due},${asOf}),0),"")`,
        "0",
      ),
      column(
        "band",
        "How late",
        `IF({row.counts}="yes",IF(AND({row.balance}>0,ISNUMBER({row.due})),SYRUP.AGE_BAND({row.due},${asOf}),""),"")`,
      ),
      column(
        "overpaid",
        "Paid too much",
        'IF({row.counts}="yes",MAX(0,ROUND({row.by_name}-{row.amount},2)),"")',
        money,
      ),
      column(
        "totes",
        "Its totes come to",
        `IF({row.counts}="yes",ROUND(SUMIFS(${register("tickets.amount")},${register("tickets.bill")},{row.bill}),2),"")`,
        money,
      ),
      column(
        "differs",
        "Invoice less totes",
        'IF({row.counts}="yes",IF(ABS({row.amount}-{row.totes})>0.005,ROUND({row.amount}-{row.totes},2),""),"")',
        money,
      ),
      column(
        "counts",
        "Counts",
        `IF({row.bill}="","",IF(AND(ISNUMBER({row.date}),ISNUMBER({row.amount})),IF({row.date}<=${asOf},"yes","no"),"no"))`,
      ),
      column(
        "known",
        "Amount that counts",
        'IF({row.counts}="yes",{row.amount},0)',
        quietMoney,
      ),
      column(
        "by_name",
        "Received by its number",
        `IF({row.counts}="yes",ROUND(SUMIFS(${paid("amount")},${paid("billOfLading")},{row.bill},${paid("customer")},{row.buyer},${paid("currency")},{row.currency},${paid("paidOn")},"<="&${asOf}),2),0)`,
        quietMoney,
      ),
      column(
        "open",
        "Open after that",
        'IF({row.counts}="yes",MAX(0,ROUND({row.amount}-{row.by_name},2)),0)',
        quietMoney,
      ),
      column("no", "No.", "{n}", quiet),
      column(
        "ahead",
        "Open and due before it",
        `IF(AND({row.open}>0,${register("matching")}="oldest first"),SUMIFS({invoices.open},${ofAccount},{invoices.due},"<"&{row.due})+SUMIFS({invoices.open},${ofAccount},{invoices.due},{row.due},{invoices.no},"<"&{n}),0)`,
        quietMoney,
      ),
      column(
        "from_free",
        "From receipts without a number",
        `IF(AND({row.open}>0,${register("matching")}="oldest first"),MAX(0,MIN({row.open},ROUND(SUMIFS({receipts.free},{receipts.buyer},{row.buyer},{receipts.currency},{row.currency})-{row.ahead},2))),0)`,
        quietMoney,
      ),
      column(
        "late",
        "Of it late",
        'IF({row.counts}="yes",IF({row.days_late}>0,{row.balance},0),0)',
        quietMoney,
      ),
      column(
        "late_days",
        "Days late, where owed",
        'IF({row.counts}="yes",{row.days_late},0)',
        quiet,
      ),
      column(
        "account",
        "Buyer and money",
        'IF({row.counts}="yes",{row.buyer}&"|"&{row.currency},"")',
      ),
      column(
        "account_no",
        "Account, No.",
        'IF({row.account}="",{row_above.account_no},IF(MATCH({row.account},{invoices.account},0)={n},{row_above.account_no}+1,{row_above.account_no}))',
        quiet,
      ),
      column(
        "in_statement",
        "Place in the statement",
        `IF({row.account}=${statement("buyer")}&"|"&${statement("money")},{row.date}+{n}/1000000,"")`,
        "0.000000",
      ),
    ],
  };
};

/** Who owes: a buyer and one money a row. */
export const accountsBlock = (facts: ToteFacts): Block => {
  const own = (figures: string, table = "invoices"): string =>
    `SUMIFS({${table}.${figures}},{${table}.buyer},{row.buyer},{${table}.currency},{row.currency})`;
  const known = (formula: string): string =>
    `IF(ISNUMBER({row.at}),${formula},"")`;
  return {
    kind: "table",
    name: "accounts",
    title: "Who owes",
    rows: facts.accounts,
    columns: [
      column("buyer", "Buyer", known("INDEX({invoices.buyer},{row.at})")),
      column("currency", "Money", known("INDEX({invoices.currency},{row.at})")),
      column("owed", "Owed", known(`ROUND(${own("balance")},2)`), money),
      ...ageBands.map((band, i) =>
        column(
          `band_${i}`,
          i === 0 ? "Not due" : `${band} days late`,
          known(
            `ROUND(SUMIFS({invoices.balance},{invoices.buyer},{row.buyer},{invoices.currency},{row.currency},{invoices.band},"${band}"),2)`,
          ),
          money,
        ),
      ),
      column("credits", "Credits", known(`ROUND(${own("overpaid")},2)`), money),
      column(
        "unapplied",
        "Unapplied receipts",
        known(
          `ROUND(${own("free", "receipts")}+${own("misfit", "receipts")}-${own("from_free")},2)`,
        ),
        money,
      ),
      column(
        "longest",
        "Longest late, days",
        known(
          "SUMPRODUCT(MAX(({invoices.buyer}={row.buyer})*({invoices.currency}={row.currency})*{invoices.late_days}))",
        ),
        "0",
      ),
      column(
        "at",
        "First invoice, row",
        'IFERROR(MATCH({n},{invoices.account_no},0),"")',
        "0",
      ),
    ],
  };
};
