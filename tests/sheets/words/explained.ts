import { tableList } from "../../../src/book/book";
import { entriesOf, type Part } from "../../../src/sheets/words/entries";
import { hasHoles, phraseOf, piecesOf } from "../../../src/sheets/words/phrase";

const parts: readonly Part[] = ["sheets", "layout", "said"];
const entries = parts.flatMap(entriesOf);
const french = new Set(entries.map(({ fr }) => fr));
const pieces = new Set(entriesOf("said").flatMap(({ fr }) => piecesOf(fr)));

/** French texts with holes, read backwards: each gives what stands in its holes. */
const phrases = entries.filter(hasHoles).map(({ fr }) =>
  phraseOf({
    en: fr.replace(/:(words|number)/g, ""),
    fr: [...fr.matchAll(/\{(\d)/g)].map(([, n = ""]) => `{${n}}`).join("\n"),
  }),
);

const isPlain = (text: string): boolean => !/\p{L}/u.test(text);

/** Whether a text of a French copy is in French words of ours, was typed in the book, or says nothing in words. */
export function explainedBy(
  typed: ReadonlySet<string>,
): (text: string) => boolean {
  const isExplained = (text: string): boolean =>
    isPlain(text) ||
    typed.has(text.trim()) ||
    french.has(text) ||
    phrases.some((phrase) =>
      phrase
        .french(text, (hole) => hole)
        ?.split("\n")
        .every(isExplained),
    ) ||
    (/; | · /.test(text) &&
      text.split(/(?<=; )| · /).every((one) => {
        const item = one.replace(/; $/, "");
        return isExplained(item) || (one !== text && isExplained(one));
      }));
  return isExplained;
}

/** Words by which native formulas choose between units and roundings, and that nobody is shown. */
const codes = ["up", "down", "nearest", "lb", "kg", "g", "oz"];

/** Rows the book is asked for by name, whether a farm has them or not. */
export const rowNames: ReadonlySet<string> = new Set(
  tableList.flatMap(([, { columns }]) =>
    Object.values(columns).flatMap(({ byName }) => Object.keys(byName ?? {})),
  ),
);

/** Whether a text in quotes in a French formula is French, a key of the book, or a sign. */
export const literalExplainedBy =
  (typed: ReadonlySet<string>): ((text: string) => boolean) =>
  (text) =>
    isPlain(text) ||
    pieces.has(text) ||
    rowNames.has(text) ||
    typed.has(text.trim()) ||
    codes.includes(text);
