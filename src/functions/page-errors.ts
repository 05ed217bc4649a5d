import { CannotAnswer } from "../measures/cannot-answer";
import type { Term } from "../terms/term";
import { answer } from "./answer";
import type { Definition, Raw } from "./define";
import { code, table } from "./page-markdown";
import { refusals } from "./page-refusals";

/** What a refused call shows. What is typed stands in backticks. */
export interface Refused {
  readonly when: string;
  readonly cell: string;
  readonly sentence: string;
}

/** What the function refuses, every sentence made by asking the function itself. */
export const refusedCalls = (definition: Definition): readonly Refused[] => [
  ...blanks(definition),
  ...beyondLimits(definition),
  ...(refusals[definition.name] ?? []).map(({ when, args }) =>
    refused(definition, args, when),
  ),
];

export function errorTable(definition: Definition): string {
  return table(
    ["When", "The cell shows", "The sentence"],
    refusedCalls(definition).map(({ when, cell, sentence }) => [
      when,
      code(cell),
      sentence,
    ]),
  );
}

function blanks(definition: Definition): readonly Refused[] {
  return Object.entries(definition.args).flatMap(([name, term], i) =>
    "otherwise" in term
      ? []
      : [
          refused(
            definition,
            exampleWith(definition, i, null),
            `${code(name)} is blank`,
          ),
        ],
  );
}

function beyondLimits(definition: Definition): readonly Refused[] {
  return Object.entries(definition.args).flatMap(([name, term], i) =>
    beyond(term).map((raw) =>
      refused(
        definition,
        exampleWith(definition, i, raw),
        `${code(name)} is ${shownRaw(raw)}`,
      ),
    ),
  );
}

const exampleWith = (
  { examples, args }: Definition,
  place: number,
  raw: Raw,
): readonly Raw[] =>
  Object.keys(args).map((_, i) => (i === place ? raw : examples[0].args[i]));

/** The nearest plain values that a term does not allow. */
function beyond(term: Term): readonly Raw[] {
  if (term.kind === "choice") return ["other"];
  if (!("min" in term || "max" in term || "above" in term || "below" in term))
    return [];
  const step = (limit: number): number =>
    limit !== 0 && Math.abs(limit) < 10 ? 0.1 : 1;
  const low =
    term.above ??
    (term.min === undefined
      ? undefined
      : term.min - (term.kind === "share" ? 0.1 : step(term.min)));
  const high =
    term.kind === "share"
      ? (term.below ?? 35)
      : term.max !== undefined
        ? term.max + step(term.max)
        : term.below;
  return [low, high]
    .filter((value) => value !== undefined)
    .map((value) => Number(value.toPrecision(9)));
}

const shownRaw = (raw: Raw): string =>
  typeof raw === "string" ? code(`"${raw}"`) : String(raw).replace("-", "−");

function refused(
  definition: Definition,
  args: readonly Raw[],
  when: string,
): Refused {
  try {
    answer(definition, args);
  } catch (error) {
    if (!(error instanceof CannotAnswer)) throw error;
    return { when, cell: error.code, sentence: error.message };
  }
  throw new Error(`SYRUP.${definition.name} has an answer when ${when}`);
}
