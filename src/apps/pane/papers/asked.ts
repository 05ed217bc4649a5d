import type { Book } from "../../../book/book";
import { CannotAnswer } from "../../../measures/cannot-answer";
import { billOfLading } from "../../../sheets/papers/bill-of-lading";
import { paperFacts } from "../../../sheets/papers/facts";
import type { Paper } from "../../../sheets/papers/page";
import { farmCodes, toteCodes } from "../../../sheets/papers/tote-codes";
import { type DrawBars, toteLabel } from "../../../sheets/papers/tote-label";
import { weightTicket } from "../../../sheets/papers/weight-ticket";
import type { Language } from "../../../sheets/words/language";
import { sentence } from "../sentence";

export const paperKinds = [
  { value: "weight ticket", text: "Weight ticket" },
  { value: "bill of lading", text: "Bill of lading" },
  { value: "tote label", text: "Tote label" },
] as const;
export type PaperKind = (typeof paperKinds)[number]["value"];

/** One paper as asked for in the pane, or the sentence that says why there is none. */
export function paperAsked(
  book: Book,
  asked: {
    readonly ticket: string;
    readonly kind: PaperKind;
    readonly prefix: string;
    readonly item: string;
    readonly serial?: string;
    readonly language?: Language;
  },
  draw: DrawBars,
): { readonly paper: Paper } | { readonly trouble: string } {
  try {
    const facts = paperFacts(book, asked.ticket);
    switch (asked.kind) {
      case "weight ticket":
        return { paper: weightTicket(facts, asked.language) };
      case "bill of lading":
        return { paper: billOfLading(facts, asked.language) };
      case "tote label":
        return {
          paper: toteLabel(
            facts,
            toteCodes(facts, farmCodes(book, asked)),
            draw,
            asked.language,
          ),
        };
    }
  } catch (problem) {
    if (!(problem instanceof CannotAnswer)) throw problem;
    return { trouble: sentence(problem.message) };
  }
}
