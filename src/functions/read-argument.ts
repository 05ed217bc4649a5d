import { unusable } from "../measures/cannot-answer";
import type { Term } from "../terms/term";
import { cellReader, isBlank } from "./read-cell";
import { listReader, rowsReader } from "./read-rows";

type Given = Term & { readonly otherwise?: number | string | undefined };
export type ArgumentReader = (raw: unknown) => unknown;

/** Turns one raw argument into the value its term promises. Blank and required is refused: "needs tare". */
export const readArgument = (
  term: Given,
  raw: unknown,
  name: string,
): unknown => argumentReader(term, name)(raw);

/** The same for many calls: what the term says is looked up once. */
export function argumentReader(term: Given, name: string): ArgumentReader {
  const words = name.replace(/_/g, " ");
  const read = readerOf(term, words);
  if (!("otherwise" in term))
    return (raw) => {
      if (typeof raw !== "number" && isBlank(raw))
        throw unusable(`needs ${words}`);
      return read(raw);
    };
  const otherwise =
    term.otherwise === undefined ? undefined : read(term.otherwise);
  return (raw) =>
    typeof raw !== "number" && isBlank(raw) ? otherwise : read(raw);
}

function readerOf(term: Term, words: string): ArgumentReader {
  if (term.kind === "rows") {
    const read = rowsReader(term.columns, words);
    return (raw) => read(asRows(raw));
  }
  if (term.kind === "list") {
    const read = listReader(term.of, "keepBlanks" in term, words);
    return (raw) => read(asRows(raw));
  }
  const read = cellReader(term);
  const say = (): string => words;
  return (raw) => read(Array.isArray(raw) ? single(raw, words) : raw, say);
}

function asRows(raw: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(raw)) return [[raw]];
  return raw.every(Array.isArray) ? (raw as unknown[][]) : [raw as unknown[]];
}

function single(raw: readonly unknown[], words: string): unknown {
  const cells = raw.flat();
  if (cells.length !== 1)
    throw unusable(`${words}: one value is wanted, not ${cells.length} cells`);
  return cells[0];
}
