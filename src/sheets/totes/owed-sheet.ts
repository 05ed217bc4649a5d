import type { Block, SheetDescription } from "../model";
import { column, day, money, type Reference } from "./columns";
import type { ToteFacts } from "./facts";
import { toteSheetNames } from "./names";
import { accountsBlock, invoicesBlock } from "./owed-blocks";
import { receiptsBlock } from "./receipts-block";

/** Invoices and receipts of the statement one under the other, to be put in order of days. */
const entriesBlock = (facts: ToteFacts): Block => {
  const either = (invoice: string, receipt: string): string =>
    `IF({n}<=${facts.invoices},${invoice},${receipt})`;
  const at = (name: string, other = name): string =>
    either(
      `INDEX({invoices.${name}},{n})`,
      `INDEX({receipts.${other}},{n}-${facts.invoices})`,
    );
  return {
    kind: "table",
    name: "entries",
    title: "Lines of the statement, before they are in order",
    rows: facts.invoices + facts.receipts,
    columns: [
      column("key", "Place", at("in_statement"), "0.000000"),
      column("what", "What", either('"Invoice"', '"Receipt"')),
      column("number", "Number", at("bill", "receipt")),
      column(
        "pays",
        "For invoice",
        either('""', `INDEX({receipts.bill},{n}-${facts.invoices})`),
      ),
      column("date", "Date", at("date"), day),
      column("due", "Due on", either("INDEX({invoices.due},{n})", '""'), day),
      column(
        "amount",
        "Amount",
        either(
          "INDEX({invoices.known},{n})",
          `-INDEX({receipts.known},{n}-${facts.invoices})`,
        ),
        money,
      ),
    ],
  };
};

/** Who owes, how late, and what became of every receipt. */
export const describeOwed = (
  facts: ToteFacts,
  {
    register,
    statement,
  }: { readonly register: Reference; readonly statement: Reference },
): SheetDescription => ({
  name: toteSheetNames.owed,
  tabColor: "#5b3a21",
  widths: [27, 27, 12, 13, 13, 12, 24, 12, 10, 12, 12, 13, 12],
  frozenRows: 1,
  print: {
    paper: "letter",
    landscape: true,
    fit: "one page wide",
    headings: { first: 0, rows: 1 },
    foot: toteSheetNames.owed,
  },
  blocks: [
    {
      kind: "title",
      content: {
        formula: `="Who owes on "&TEXT(${register("as_of")},"yyyy-mm-dd")`,
      },
    },
    {
      kind: "notes",
      lines: [
        "A receipt pays the invoice it names, and no other buyer's. What was paid too much is a credit of that buyer and settles nothing by itself. Two moneys are never added.",
      ],
    },
    accountsBlock(facts),
    invoicesBlock(facts, register, statement),
    receiptsBlock(facts, register, statement),
    entriesBlock(facts),
  ],
});
