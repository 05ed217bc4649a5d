import fc from "fast-check";
import { functions } from "../../src/functions";
import { explained } from "../../src/functions/answer";
import type { Answer, Answers, Definition } from "../../src/functions/define";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { anyArguments } from "../support/any-argument";

/** Argument lists nobody would type on purpose, the same ones in every run. */
const LISTS = 100_000;
const SEED = 20_261_125;
const SLOW_MS = 50;

const perFunction = Math.ceil(LISTS / functions.length);
const slowest: { readonly title: string; readonly again: () => void }[] = [];

test.each(functions.map((f) => [f.name, f] as const))(
  "%s answers anything in its cells with a value or one sentence",
  (name, definition) => {
    const lists = fc.sample(argumentList(definition), {
      seed: SEED,
      numRuns: perFunction,
    });
    let [longest, worst] = [0, lists[0] ?? []];
    for (const raw of lists) {
      const start = performance.now();
      const complaint = complaintAbout(definition, raw);
      const took = performance.now() - start;
      if (took > longest) [longest, worst] = [took, raw];
      if (complaint) throw new Error(`${name}(${shown(raw)}): ${complaint}`);
    }
    slowest.push({
      title: `${name}(${shown(worst)})`,
      again: () => void complaintAbout(definition, worst),
    });
  },
);

test("no cell waits longer than it takes to notice", () => {
  expect(slowest).toHaveLength(functions.length);
  const tooSlow = slowest
    .map(({ title, again }) => ({ title, ms: quickestOf(5, again) }))
    .filter(({ ms }) => ms > SLOW_MS);
  expect(tooSlow).toEqual([]);
});

/** What is wrong with the way a call ended, or nothing. */
function complaintAbout(
  definition: Definition,
  raw: readonly unknown[],
): string | undefined {
  try {
    const { answer, why } = explained(definition, raw);
    const cells = (Array.isArray(answer) ? answer : [[answer]]) as Answers;
    if (cells.length === 0 || cells.some((row) => row.length === 0))
      return "the answer has no cells";
    if (!cells.flat().every(fitsACell))
      return `the answer is ${JSON.stringify(answer)}`;
    return unreadable(why) ? `the arithmetic reads "${why}"` : undefined;
  } catch (error) {
    if (!(error instanceof CannotAnswer))
      return `it broke with ${String(error)}`;
    return unreadable(error.message)
      ? `the refusal reads "${error.message}"`
      : undefined;
  }
}

const fitsACell = (cell: Answer): boolean =>
  typeof cell === "number"
    ? Number.isFinite(cell)
    : typeof cell === "string" || typeof cell === "boolean";

const unreadable = (sentence: string): boolean =>
  sentence.trim() === "" ||
  // What the caller typed may be quoted; the words around it may not be a program's.
  /\b(NaN|undefined|null|Infinity)\b|\[object/.test(
    sentence.replace(/"[^"]*"/g, '""'),
  );

/** The clock also counts what else the machine is doing; the quickest of a few runs hardly does. */
function quickestOf(runs: number, work: () => void): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return Math.min(...times);
}

const shown = (raw: readonly unknown[]): string =>
  JSON.stringify(raw).slice(1, -1);

const FAIR = Symbol("the fair argument stays");

/** Fair arguments with wild ones among them, so that some calls get past the door; now and then too few or too many. */
function argumentList({ args }: Definition): fc.Arbitrary<readonly unknown[]> {
  const names = Object.keys(args);
  const changed = names.map(() =>
    fc.oneof(
      { arbitrary: fc.constant(FAIR), weight: 4 },
      { arbitrary: wild, weight: 1 },
    ),
  );
  return fc.oneof(
    {
      arbitrary: fc
        .tuple(anyArguments(args), fc.tuple(...changed))
        .map(([fair, other]) =>
          fair.map((raw, i) => (other[i] === FAIR ? raw : other[i])),
        ),
      weight: 8,
    },
    {
      arbitrary: fc.array(wild, { maxLength: names.length + 1 }),
      weight: 1,
    },
  );
}

const cell: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(null, undefined, "", " "),
  fc.integer({ min: -10, max: 500 }),
  fc.double(),
  fc.constantFrom(0, -0, 1e-300, 1e300, Number.NaN, Infinity, -1e15),
  fc.boolean(),
  fc.constantFrom("#REF!", "#N/A", "#DIV/0!").map((error) => ({ error })),
  fc.integer({ min: -5, max: 3_000_000 }),
  fc.constantFrom("2026-11-25", "2026-02-30", "03/04/2026", "1899-12-31"),
  fc.constantFrom(
    "66,4",
    "1,234",
    "1 384 kg",
    "12 fl oz",
    "185 °F",
    "85 C",
    "35 %",
    "-5 lb",
    "1e400",
    "1e-400 gal",
    "3 imp gal",
    "=1+1",
    "lb",
  ),
  fc.string({ maxLength: 12 }),
  fc.string({ unit: "grapheme", maxLength: 6 }),
);

/** Ranges as a host hands them over, and as it never should: ragged, empty, one-dimensional. */
const wild: fc.Arbitrary<unknown> = fc.oneof(
  { arbitrary: cell, weight: 3 },
  {
    arbitrary: fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 6 }),
    weight: 2,
  },
  { arbitrary: fc.array(cell, { maxLength: 4 }), weight: 1 },
);
