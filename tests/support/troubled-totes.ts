import type { Contents } from "../../src/book/contents";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { demoFolder } from "../book/csv-folder";

const lines =
  (...more: readonly string[]) =>
  (text: string): string =>
    `${text.trimEnd()}\n${more.join("\n")}\n`;

type Edit = (text: string) => string;

const both =
  (first: Edit, second: Edit): Edit =>
  (text) =>
    second(first(text));

/** More columns at the right; filled in the rows named by their first cell, blank in all others. */
const withColumns =
  (
    headings: readonly string[],
    rows: Readonly<Record<string, readonly string[]>>,
  ): Edit =>
  (text) =>
    text
      .trimEnd()
      .split("\n")
      .map((line, i) =>
        [
          line,
          ...(i === 0
            ? headings
            : (rows[line.split(",")[0] ?? ""] ?? headings.map(() => ""))),
        ].join(","),
      )
      .join("\n");

/** Receipts without a number or for another's invoice, swapped weights, an unknown contract, too much drawn, weights the buyer
 * disputes, a tote above its plate, freight known in part. */
export const troubledTotes = (): readonly Contents[] =>
  bookTablesFromCsv(
    demoFolder({
      "tote_payments.csv": lines(
        "PAY-900,2026-11-12,Nettlecombe Sauces,,5000,USD,no number",
        "PAY-901,2026-11-13,Oatloft Bakery,BOL-020,100,USD,not theirs",
        "PAY-902,2026-11-14,Larkspindle Foods (Canada),BOL-018,40,CAD,other money",
        "PAY-903,2026-11-14,Pinwhistle Creamery,,30000,USD,more than is owed",
      ),
      "tote_contracts.csv": withColumns(
        ["dock_or_delivered", "freight_of_a_load", "load_lb"],
        {
          "C-2502": ["dock", "1600", "40000"],
          "C-2601": ["delivered", "1850", "40800"],
          "C-2602": ["delivered", "0", "40000"],
          "C-2603": ["delivered", "", ""],
          "C-2604": ["dock", "900", ""],
        },
      ),
      "tote_shipments.csv": both(
        withColumns(["plate_limit_lb", "buyer_net_lb"], {
          "T-001": ["3000", "2912"],
          "T-003": ["", "2910"],
          "T-004": ["3300", "2933.26"],
          "T-040": ["", "2890"],
          "T-043": ["", "2870"],
          "T-044": ["3300", "2880"],
        }),
        lines(
          "T-045,2026-11-20,C-2603,Larkspindle Foods (Canada),BOL-027,135,3047,2912,65.9,11.025,264.13,11822.06,CAD,new,120,,26-05:2912",
          "T-046,2026-11-20,C-2699,Oatloft Bakery,BOL-028,3047,135,2912,65.9,11.025,264.13,,USD,new,120,,26-03:2912",
          "T-047,2026-11-20,C-2601,Oatloft Bakery,BOL-029,6547,135,6412,66.4,11.05,580.3,,USD,new,,,26-03:3412; 26-10:3000",
        ),
      ),
      "lot_use.csv": lines("2026-11-20,26-08,lost or adjusted,,5200"),
    }),
  ).tables;
