import type { Entry } from "./entries";

const HOLE = /\{(\d)(?::(words|number))?\}/;
const HOLES = new RegExp(HOLE, "g");

export const hasHoles = ({ en }: Entry): boolean => HOLE.test(en);

/** A text with holes, ready to be recognised. */
export interface Phrase {
  readonly entry: Entry;
  /** How much of it is fixed: the more, the surer it is meant. */
  readonly fixed: number;
  /** The text in French, or undefined for a text of another shape. */
  readonly french: (
    text: string,
    inner: (text: string) => string,
  ) => string | undefined;
}

export function phraseOf(entry: Entry): Phrase {
  const pieces = piecesOf(entry.en);
  const holes = [...entry.en.matchAll(HOLES)];
  const shape = new RegExp(
    `^${pieces
      .map((piece, i) => {
        const hole = holes[i];
        return `${escaped(piece)}${hole ? (hole[2] === "number" ? "([\\d.,]+)" : "(.+)") : ""}`;
      })
      .join("")}$`,
    "s",
  );
  return {
    entry,
    fixed: pieces.join("").length,
    french: (text, inner) => {
      const found = shape.exec(text);
      if (!found) return undefined;
      const filled = new Map(
        holes.map(([, number = "", kind], i) => {
          const typed = found[i + 1] ?? "";
          return [
            number,
            kind === "number"
              ? numberInFrench(typed)
              : kind === "words"
                ? inner(typed)
                : typed,
          ];
        }),
      );
      return entry.fr.replace(
        HOLES,
        (_, number: string) => filled.get(number) ?? "",
      );
    },
  };
}

/** What stands before, between and after the holes. */
export const piecesOf = (text: string): readonly string[] =>
  text.split(/\{\d(?::\w+)?\}/);

const escaped = (text: string): string =>
  text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** "2,500.5" as it is written in Canadian French: a space that does not break, and a comma. */
export const numberInFrench = (text: string): string =>
  text.replace(/,/g, "\u00a0").replace(".", ",");
