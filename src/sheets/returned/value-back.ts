import { readCell } from "../../functions/read-cell";
import { unusable } from "../../measures/cannot-answer";
import { readNumber } from "../../measures/read-number";
import type { CellTerm } from "../../terms/term";
import type { CopyChange } from "../compare/compare-workbooks";
import type { CellValue, Validation } from "../workbook";

const figures: readonly CellTerm["kind"][] = [
  "quantity",
  "share",
  "money",
  "number",
  "date",
];

/**
 * What would be typed into the book for a change, in the unit of its column. Refuses (#VALUE!), with a sentence, a formula,
 * a blank, an error and what the column does not allow.
 */
export function valueBack(
  change: CopyChange,
  term: CellTerm,
  words: string,
): CellValue {
  const given = typedBack(change);
  const value =
    typeof given === "string" && figures.includes(term.kind)
      ? fromText(given, term, words)
      : given;
  readCell(term, value, words);
  return value;
}

/** A quantity's text is read in the column's own unit, because a reader typed over a plain number. */
const fromText = (text: string, term: CellTerm, words: string): CellValue =>
  term.kind === "quantity"
    ? readNumber(text, words)
    : (readCell(term, text, words) as number);

/** The same for an input of a sheet, whose rule says what is allowed. */
export function inputBack(
  change: CopyChange,
  rule: Validation["rule"] | undefined,
  words: string,
): CellValue {
  const given = typedBack(change);
  if (rule === undefined || rule.kind === "list from") return given;
  if (rule.kind === "list") {
    if (rule.choices.some((choice) => choice === given)) return given;
    throw unusable(
      `${words}: "${String(given)}" is none of ${rule.choices.join(", ")}`,
    );
  }
  const value =
    typeof given === "string" ? readNumber(given, words) : Number(given);
  const { min = -Infinity, max = Infinity } = rule;
  if (value < min || value > max)
    throw unusable(
      `${words}: ${value} is not ${max === Infinity ? `${min} or more` : `from ${min} to ${max}`}`,
    );
  if (rule.kind === "whole number" && !Number.isInteger(value))
    throw unusable(`${words}: ${value} is not a whole number`);
  return value;
}

function typedBack({ kind, now, formulaNow }: CopyChange): CellValue {
  if (formulaNow !== undefined)
    throw unusable(
      kind === "formula changed"
        ? "its formula was rewritten, and only a typed figure can be taken over"
        : "a formula stands there now, and only a typed figure can be taken over",
    );
  if (now === null || now === "")
    throw unusable(
      "it was cleared, and a blank is never taken for a figure; if the book is to hold none, clear its cell yourself",
    );
  if (typeof now === "object")
    throw unusable(`it came back as the error ${now.error}`);
  return now;
}
