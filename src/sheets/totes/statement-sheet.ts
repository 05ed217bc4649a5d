import type { Block, Line, SheetDescription } from "../model";
import { column, day, money, type Reference } from "./columns";
import type { ToteFacts } from "./facts";
import { toteSheetNames } from "./names";
import { currencies } from "./register-sheet";

/** Lines on the page; older ones are summed up before them. */
const MOST_LINES = 60;

const linesBlock = (facts: ToteFacts, owed: Reference): Block => {
  const entry = (name: string): string =>
    `IF(ISNUMBER({row.at}),INDEX(${owed(`entries.${name}`)},{row.at}),"")`;
  return {
    kind: "table",
    name: "statement",
    title: "Account",
    rows: Math.min(MOST_LINES, facts.invoices + facts.receipts),
    columns: [
      column("what", "What", entry("what")),
      column("number", "Number", entry("number")),
      column("date", "Date", entry("date"), day),
      column("pays", "For invoice", entry("pays")),
      column("due", "Due on", entry("due"), day),
      column("amount", "Amount", entry("amount"), money),
      column(
        "balance",
        "Balance",
        'IF(ISNUMBER({row.at}),ROUND(IF({n}=1,{before},N({row_above.balance}))+{row.amount},2),"")',
        money,
      ),
      column(
        "at",
        "Row",
        `IF({n}+{earlier}>COUNT(${owed("entries.key")}),"",MATCH(SMALL(${owed("entries.key")},{n}+{earlier}),${owed("entries.key")},0))`,
        "0",
      ),
    ],
  };
};

const figure = (
  name: string,
  label: string,
  formula: string,
  format = money,
): Line => ({
  name,
  label,
  role: "calculated",
  format,
  content: { formula: `=${formula}` },
});

/** One buyer's account in one money, ready to print. */
export const describeStatement = (
  facts: ToteFacts,
  {
    register,
    owed,
    accounts,
  }: {
    readonly register: Reference;
    readonly owed: Reference;
    /** Buyers there are now, to choose from. */
    readonly accounts: readonly string[];
  },
): SheetDescription => {
  const ofAccount = (name: string): string =>
    `ROUND(SUMIFS(${owed(`accounts.${name}`)},${owed("accounts.buyer")},{buyer},${owed("accounts.currency")},{money}),2)`;
  return {
    name: toteSheetNames.statement,
    tabColor: "#5b3a21",
    widths: [38, 28, 13, 14, 13, 14, 14, 7],
    frozenRows: 1,
    print: {
      paper: "letter",
      landscape: false,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
      foot: toteSheetNames.statement,
    },
    blocks: [
      {
        kind: "title",
        content: {
          formula: `="Statement on "&TEXT(${register("as_of")},"yyyy-mm-dd")`,
        },
      },
      {
        kind: "lines",
        title: "Whose",
        lines: [
          {
            name: "buyer",
            label: "Buyer",
            role: "input",
            content: accounts[0] ?? "",
            hint: "choose another",
            ...(accounts.length === 0
              ? {}
              : {
                  rule: { kind: "list" as const, choices: accounts },
                  ruleSays: "A buyer with an invoice.",
                }),
          },
          {
            name: "money",
            label: "Money",
            role: "input",
            content: {
              formula: `=IFERROR(INDEX(${owed("invoices.currency")},MATCH({buyer},${owed("invoices.buyer")},0)),"${currencies[0] ?? ""}")`,
            },
            hint: "one money a page",
            rule: { kind: "list", choices: currencies },
            ruleSays: "One of the moneys of the book.",
          },
        ],
      },
      {
        kind: "lines",
        title: "In short",
        lines: [
          figure("owed", "Owed on open invoices", ofAccount("owed")),
          figure("not_due", "Of it not due", ofAccount("band_0")),
          figure("late", "Of it late", "{owed}-{not_due}"),
          figure("credits", "Credits", ofAccount("credits")),
          figure(
            "unapplied",
            "Received, not yet set against an invoice",
            ofAccount("unapplied"),
          ),
          figure(
            "net",
            "Balance of the account",
            "ROUND({owed}-{credits}-{unapplied},2)",
          ),
          figure(
            "earlier",
            "Older lines, not on this page",
            `MAX(0,COUNT(${owed("entries.key")})-ROWS({statement.date}))`,
            "0",
          ),
          figure(
            "before",
            "Balance before the first line",
            `IF({earlier}=0,0,ROUND(SUMIFS(${owed("entries.amount")},${owed("entries.key")},"<="&SMALL(${owed("entries.key")},MAX(1,{earlier}))),2))`,
          ),
        ],
      },
      linesBlock(facts, owed),
    ],
  };
};
