import { plainName, tellsSomething } from "./spellings";

interface Name {
  readonly name: string;
  /** Where its first word stands in it. */
  readonly at: number;
  readonly where: string;
}

const WORD = /[\p{L}\p{N}]+/gu;
const INNER = /[\p{L}\p{N}]/u;

/** Finds any of many names in a text in one pass over its words, so that a thousand names cost no more than one. */
export class NameFinder {
  readonly #byFirstWord = new Map<string, Name[]>();

  /** `names` with the words for where each comes from; one too short to be anybody's is left out. */
  constructor(names: Iterable<readonly [name: string, where: string]>) {
    for (const [written, where] of names) {
      const name = plainName(written);
      const [first] = name.matchAll(WORD);
      if (!first || !tellsSomething(name)) continue;
      const found = this.#byFirstWord.get(first[0]) ?? [];
      found.push({ name, at: first.index, where });
      this.#byFirstWord.set(first[0], found);
    }
  }

  /** Names that stand in the text as words of their own, in any of their spellings. */
  in(text: string): readonly Pick<Name, "name" | "where">[] {
    const plain = plainName(text);
    const found = new Set<Name>();
    for (const { 0: word, index } of plain.matchAll(WORD))
      for (const one of this.#byFirstWord.get(word) ?? [])
        if (stands(plain, one.name, index - one.at)) found.add(one);
    return [...found];
  }
}

const stands = (text: string, name: string, start: number): boolean =>
  start >= 0 &&
  text.startsWith(name, start) &&
  !INNER.test(text[start - 1] ?? "") &&
  !INNER.test(text[start + name.length] ?? "");
