import { unusable } from "../measures/cannot-answer";
import type { Answer, Answers, Definition, Raw } from "./define";
import { type ArgumentReader, argumentReader } from "./read-argument";

/**
 * Calls a function with raw worksheet values. Throws CannotAnswer with the sentence to show; never gives NaN or
 * an infinite number.
 */
export function answer(
  definition: Definition,
  raw: readonly Raw[],
): Answer | Answers {
  const given = definition.compute(readArguments(definition, raw) as never);
  check(definition, given);
  return given;
}

/** The same, with the line of arithmetic in trade words. */
export function explained(
  definition: Definition,
  raw: readonly Raw[],
): { readonly answer: Answer | Answers; readonly why: string } {
  const values = readArguments(definition, raw) as never;
  const given = definition.compute(values);
  check(definition, given);
  return { answer: given, why: definition.why(values, given) };
}

interface Prepared {
  readonly count: number;
  readonly readers: readonly {
    readonly name: string;
    readonly read: ArgumentReader;
  }[];
}

/** A sheet calls one function thousands of times; what its terms say is looked up at the first call. */
const prepared = new WeakMap<Definition, Prepared>();

function preparedFor(definition: Definition): Prepared {
  const known = prepared.get(definition);
  if (known) return known;
  const readers = Object.entries(definition.args).map(([name, term]) => ({
    name,
    read: argumentReader(term, name),
  }));
  const made = { count: readers.length, readers };
  prepared.set(definition, made);
  return made;
}

function readArguments(
  definition: Definition,
  raw: readonly Raw[],
): Readonly<Record<string, unknown>> {
  const { count, readers } = preparedFor(definition);
  if (raw.length > count)
    throw unusable(
      `SYRUP.${definition.name} takes ${count} arguments, not ${raw.length}`,
    );
  const values: Record<string, unknown> = {};
  let i = 0;
  for (const { name, read } of readers) values[name] = read(raw[i++]);
  return values;
}

function check(definition: Definition, given: Answer | Answers): void {
  if (typeof given === "number" && Number.isFinite(given)) return;
  if (!Array.isArray(given)) return checkCell(definition, given as Answer);
  for (const row of given as Answers)
    for (const cell of row) checkCell(definition, cell);
}

function checkCell({ name }: Definition, cell: Answer): void {
  if (typeof cell === "number" && !Number.isFinite(cell))
    throw unusable(
      `SYRUP.${name} cannot work with these figures: the answer is no ordinary number`,
    );
}
