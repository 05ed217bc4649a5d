import { isBlank, readCell } from "../functions/read-cell";
import type { Gallon } from "../measures/gallon";
import { CannotAnswer } from "../measures/cannot-answer";
import { readNumber } from "../measures/read-number";
import { fromHouse, unitNamed } from "../measures/units";
import type { CellTerm } from "../terms/term";
import type { CellContent } from "./contents";
import { unitSaid } from "./unit-said";
import { termNamed } from "./named-value";
import type { Column } from "./table";

/** A worksheet value made of CSV text; `as` says how it was understood where that was not plain to see. */
export interface Understood {
  readonly content: CellContent;
  readonly as?: string;
}

/** Turns one CSV cell into a worksheet value in the column's stated unit; `refused` names the column and why. */
export function csvCell(
  column: Column,
  written: string,
  words: string,
  rowName: string | undefined,
  gallon?: Gallon,
): Understood | { readonly refused: string } {
  try {
    if (isBlank(written)) return blank(column, words);
    if (column.byName) return named(column.byName, written, words, rowName);
    return understood(
      column.term,
      column.csvPercent === true,
      written,
      words,
      gallon,
    );
  } catch (error) {
    if (!(error instanceof CannotAnswer)) throw error;
    return { refused: error.message };
  }
}

const blank = (
  column: Column,
  words: string,
): Understood | { readonly refused: string } =>
  column.mayBeBlank || column.blankIs !== undefined || column.inferred
    ? { content: null }
    : { refused: `${words}: blank, but it is needed: ${column.term.about}` };

/** A setting: a date where its name asks for one, else a number if it is written as one, else text. */
function named(
  terms: Readonly<Record<string, CellTerm>>,
  written: string,
  words: string,
  rowName: string | undefined,
): Understood {
  const term = termNamed(terms, rowName);
  const text = written.trim();
  if (term?.kind === "date") return understood(term, false, text, words);
  if (term?.kind === "text" || term?.kind === "choice")
    return { content: text };
  return { content: PLAIN.test(text) ? Number(text) : text };
}

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;

function understood(
  term: CellTerm,
  percent: boolean,
  written: string,
  words: string,
  gallon?: Gallon,
): Understood {
  const text = written.trim();
  switch (term.kind) {
    case "text":
      return { content: text };
    case "choice":
      return { content: String(readCell(term, text, words)) };
    case "yes or no":
      return { content: readCell(term, text, words) === true ? "yes" : "no" };
    case "date":
      return { content: Number(readCell(term, text, words)) };
    case "share":
      return shareCell(term, percent, text, words);
    case "quantity":
    case "number":
    case "money": {
      const value = Number(
        readCell(term, PLAIN.test(text) ? Number(text) : text, words, gallon),
      );
      if (PLAIN.test(text)) return { content: Number(text) };
      const content =
        term.kind === "quantity"
          ? tidy(fromHouse(value, unitNamed(term.unit)))
          : value;
      return {
        content,
        as: `${content} ${unitSaid(term.unit, gallon)}`.trim(),
      };
    }
  }
}

function shareCell(
  term: CellTerm,
  percent: boolean,
  text: string,
  words: string,
): Understood {
  const inPercent = percent && !text.endsWith("%");
  const given = inPercent ? tidy(readNumber(text, words) / 100) : text;
  const content = tidy(Number(readCell(term, given, words)));
  return PLAIN.test(text)
    ? { content }
    : { content, as: `${tidy(content * 100)} %` };
}

/** Drops the binary noise of a conversion, beyond the digits a worksheet keeps. */
const tidy = (value: number): number => Number(value.toPrecision(12));
