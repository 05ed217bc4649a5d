import { hasHoles, type Phrase, phraseOf, piecesOf } from "./phrase";
import { entriesOf, type Part } from "./entries";

/** The texts of one part in French. */
interface Lexicon {
  readonly exact: ReadonlyMap<string, string>;
  readonly phrases: readonly Phrase[];
}

const made = new Map<Part, Lexicon>();

function lexicon(part: Part): Lexicon {
  const known = made.get(part);
  if (known) return known;
  const entries = entriesOf(part);
  const fresh = {
    exact: new Map(
      entries.filter((one) => !hasHoles(one)).map(({ en, fr }) => [en, fr]),
    ),
    phrases: entries
      .filter(hasHoles)
      .map(phraseOf)
      .sort((a, b) => b.fixed - a.fixed),
  };
  made.set(part, fresh);
  return fresh;
}

/** A text of ours in French; undefined for one that is not in the words of that part. */
export function inFrench(part: Part, text: string): string | undefined {
  const { exact, phrases } = lexicon(part);
  const found = exact.get(text);
  if (found !== undefined) return found;
  for (const phrase of phrases) {
    const french = phrase.french(text, (hole) => inFrench(part, hole) ?? hole);
    if (french !== undefined) return french;
  }
  return undefined;
}

/** A label, unit, hint or heading; a word of the book's own choices may stand there too. */
export const layoutInFrench = (text: string): string =>
  inFrench("layout", text) ?? saidInFrench(text);

/** What a cell says: an answer of a formula, a choice of the book in any case, or a list of such; anything else was typed and stays. */
export function saidInFrench(text: string): string {
  const found = inFrench("said", text) ?? inFrench("said", text.toLowerCase());
  if (found !== undefined) return found;
  if (!text.endsWith(LISTED)) return text;
  return text
    .split(new RegExp(`(?<=${LISTED})`))
    .map((one) => inFrench("said", one) ?? one)
    .join("");
}

const LISTED = "; ";

let pieces: ReadonlyMap<string, string> | undefined;

/** A text in quotes in a formula: a whole answer, or a piece that the formula joins to others. */
export function literalInFrench(text: string): string {
  pieces ??= new Map(
    entriesOf("said").flatMap(({ en, fr }) => {
      const french = piecesOf(fr);
      return piecesOf(en).map((piece, i) => [piece, french[i] ?? ""] as const);
    }),
  );
  return pieces.get(text) ?? text;
}
