import type { Definition } from "../../../functions/define";
import { sameInTheTrade, saysNothing } from "./trade-words";
import { wordsOf } from "./words-of";

/**
 * The functions that answer a question put in a person's own words, best first; undefined when the words tell nothing
 * apart, so that there is nothing to look for.
 */
export function functionsFor(
  functions: readonly Definition[],
  question: string,
): readonly Definition[] | undefined {
  const said = new Set(wordsOf(question));
  const asked = [...said].filter((word) => !saysNothing.has(word));
  if (asked.length === 0) return undefined;
  const entries = functions.map(entryOf);
  const hits = asked.map((word) => entries.map((entry) => best(word, entry)));
  const scores = functions.map((definition, i) => {
    const score = hits.reduce(
      (sum, hit) => sum + (hit[i] ?? 0) * rarity(hit),
      0,
    );
    const rank = score * (1 + closeness(definition, said));
    return { definition, score, rank };
  });
  const top = Math.max(0, ...scores.map(({ score }) => score));
  return scores
    .filter(({ score }) => score > 0 && score >= top * FAR_BEHIND)
    .sort((a, b) => b.rank - a.rank)
    .map(({ definition }) => definition);
}

/** What answers the question this much worse than the best is no answer to it. */
const FAR_BEHIND = 0.35;

/** Between equals, the one whose name or question was typed almost word for word; a name even in the right order. */
function closeness(
  { name, question }: Definition,
  said: ReadonlySet<string>,
): number {
  const words = [...said].filter((word) => word !== "syrup");
  if (words.join(" ") === wordsOf(name).join(" ")) return 2;
  return Math.max(...[name, question].map((text) => inCommon(text, said)));
}

function inCommon(text: string, said: ReadonlySet<string>): number {
  const words = new Set(wordsOf(text));
  const both = [...words].filter((word) => said.has(word)).length;
  return both / (words.size + said.size - both);
}

/** A word that few functions have tells more than one that many have. */
function rarity(hit: readonly number[]): number {
  const having = hit.filter((score) => score > 0).length;
  return Math.log(1 + hit.length / Math.max(1, having));
}

/** The words of a function, each with how much a hit there counts. */
type Entry = ReadonlyMap<string, number>;

const entries = new WeakMap<Definition, Entry>();

function entryOf(definition: Definition): Entry {
  const known = entries.get(definition);
  if (known) return known;
  const entry = new Map<string, number>();
  for (const [text, weight] of textsOf(definition))
    for (const word of wordsOf(text))
      entry.set(word, Math.max(weight, entry.get(word) ?? 0));
  entries.set(definition, entry);
  return entry;
}

const textsOf = (
  definition: Definition,
): readonly (readonly [string, number])[] => {
  const { name, question, summary, gives, family, args, notes } = definition;
  return [
    [name, 4],
    [question, 4],
    [summary, 2.5],
    [`${gives.about} ${gives.spills?.join(" ") ?? ""}`, 1.5],
    ...Object.entries(args).flatMap(([argument, term]) => [
      [`${argument} ${term.label}`, 1.2] as const,
      [term.about, 0.6] as const,
      ...(term.kind === "rows"
        ? Object.keys(term.columns).map((column) => [column, 0.6] as const)
        : []),
      ...(term.kind === "choice"
        ? [[term.choices.join(" "), 0.6] as const]
        : []),
    ]),
    [family, 0.6],
    [notes?.join(" ") ?? "", 0.4],
  ];
};

const LIKE = 0.7;
const SAME_IN_THE_TRADE = 0.55;
const MISTYPED = 0.4;

/** The best hit of a word in an entry. */
function best(word: string, entry: Entry): number {
  let found = entry.get(word) ?? 0;
  for (const [other, weight] of entry) {
    const likeness = isLike(word, other)
      ? LIKE
      : isMistyped(word, other)
        ? MISTYPED
        : 0;
    found = Math.max(found, weight * likeness);
  }
  for (const same of meaning(word))
    found = Math.max(found, (entry.get(same) ?? 0) * SAME_IN_THE_TRADE);
  return found;
}

/** One word begins with the other: "shrink" and "shrinkage", or a word not yet typed to its end. */
const isLike = (word: string, other: string): boolean =>
  (word.length >= 3 && other.startsWith(word)) ||
  (other.length >= 4 && word.startsWith(other));

/** One letter wrong, missing, too many, or two letters the wrong way round. */
function isMistyped(word: string, other: string): boolean {
  if (word.length < 5 || Math.abs(word.length - other.length) > 1) return false;
  let start = 0;
  while (start < word.length && word[start] === other[start]) start += 1;
  const [rest, otherRest] = [word.slice(start), other.slice(start)];
  return (
    rest.slice(1) === otherRest ||
    rest === otherRest.slice(1) ||
    rest.slice(1) === otherRest.slice(1) ||
    (rest[0] === otherRest[1] &&
      rest[1] === otherRest[0] &&
      rest.slice(2) === otherRest.slice(2))
  );
}

const meaning = (word: string): readonly string[] =>
  sameInTheTrade.filter((group) => group.includes(word)).flat();
