import { inFrench, saidInFrench } from "./french";
import type { Language } from "./language";

/** The words of a paper in one language. */
export interface Say {
  readonly language: Language;
  /** A text of ours; one that the words do not hold is a programmer's mistake and throws. */
  readonly words: (text: string) => string;
  /** A choice of the book, "new" or "Amber"; what somebody typed stays. */
  readonly choice: (text: string) => string;
  /** How numbers are written. */
  readonly locale: "en-US" | "fr-CA";
}

const english: Say = {
  language: "en",
  words: (text) => text,
  choice: (text) => text,
  locale: "en-US",
};

const french: Say = {
  language: "fr",
  words: (text) => {
    const found = inFrench("papers", text);
    if (found === undefined)
      throw new Error(`The words of the papers have no French for "${text}"`);
    return found;
  },
  choice: saidInFrench,
  locale: "fr-CA",
};

export const sayIn = (language: Language): Say =>
  language === "en" ? english : french;
