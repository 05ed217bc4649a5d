import type { Answer, Answers, Definition, Raw } from "./define";
import { readArgument } from "./read-argument";
import { unusable } from "../measures/cannot-answer";

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

function readArguments(
  definition: Definition,
  raw: readonly Raw[],
): Readonly<Record<string, unknown>> {
  const names = Object.keys(definition.args);
  if (raw.length > names.length) {
    throw unusable(
      `SYRUP.${definition.name} takes ${names.length} arguments, not ${raw.length}`,
    );
  }
  const values: Record<string, unknown> = {};
  for (const [i, name] of names.entries()) {
    const term = definition.args[name];
    if (term) values[name] = readArgument(term, raw[i], name);
  }
  return values;
}

function check(definition: Definition, given: Answer | Answers): void {
  const cells = Array.isArray(given)
    ? (given as Answers).flat()
    : [given as Answer];
  for (const cell of cells) {
    if (typeof cell === "number" && !Number.isFinite(cell)) {
      throw unusable(
        `SYRUP.${definition.name} cannot work with these figures: the answer is no ordinary number`,
      );
    }
  }
}
