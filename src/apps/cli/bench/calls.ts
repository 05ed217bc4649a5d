import { functionNamed } from "../../../functions";
import { answer } from "../../../functions/answer";
import type { Definition } from "../../../functions/define";
import { calls } from "./call-list";
import { compared } from "./clock";
import type { Figure } from "./figure";

const CALLS = 20_000;
/** Different figures for neighbouring calls, so that nothing can be worked out once for all of them. */
const VARIED = 64;

/** What a worksheet call costs beyond its arithmetic: reading and checking its arguments, and checking its answer. */
export async function callFigures(rounds: number): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const { family, name, args, bare, ranges } of calls) {
    const definition = definitionOf(name);
    const written = Array.from({ length: VARIED }, (_, i) => args(i));
    same(name, answer(definition, args(7)), bare(7));
    const { milliseconds, yardstick, ratio } = await compared(
      rounds,
      () => repeated((i) => answer(definition, written[i] ?? [])),
      () => repeated(bare),
    );
    figures.push({
      work: `${family}: \`${name}\``,
      takes: `${nanoseconds(milliseconds)} (${perSecond(milliseconds)})`,
      yardstick: nanoseconds(yardstick),
      ratio,
      ...(ranges ? {} : { aim: "under 3 times", isMet: ratio < 3 }),
    });
  }
  return figures;
}

export function definitionOf(name: string): Definition {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`There is no function ${name} to measure`);
  return definition;
}

/** Two things that do not give the same answer are not worth comparing. */
export function same(
  work: string,
  given: unknown,
  bare: number,
  within = 1e-9,
): void {
  if (!(Math.abs(Number(given) - bare) <= within * Math.abs(bare)))
    throw new Error(`${work} gives ${String(given)}, its yardstick ${bare}`);
}

function repeated(call: (i: number) => unknown): unknown {
  let last: unknown;
  for (let i = 0; i < CALLS; i += 1) last = call(i % VARIED);
  return last;
}

/** "2.55 million a second" */
const perSecond = (milliseconds: number): string =>
  `${(CALLS / milliseconds / 1000).toFixed(2)} million a second`;

const nanoseconds = (milliseconds: number): string =>
  `${((milliseconds * 1e6) / CALLS).toFixed(0)} ns`;
