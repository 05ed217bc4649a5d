import type { ReadArea, ReadAreas } from "./read-areas";

/** A formula's cell, as far as order goes. */
export interface Placed {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface RunningOrder<Formula> {
  /** What is to be worked out, nothing before what it reads. */
  readonly formulas: readonly Formula[];
  /** Whether some of them need their own results. */
  readonly isCircular: boolean;
}

/** These formulas and all that follow from them, in an order to work them out in. */
export function runningOrder<Formula extends Placed>(
  changed: Iterable<Formula>,
  areas: ReadAreas<Formula>,
): RunningOrder<Formula> {
  const open = new Set<Formula | ReadArea<Formula>>();
  const done = new Set<Formula | ReadArea<Formula>>();
  const lastFirst: Formula[] = [];
  let isCircular = false;
  for (const start of changed) {
    const path: Step<Formula>[] = [];
    const enter = (on: Formula | ReadArea<Formula>): void => {
      if (done.has(on)) return;
      if (open.has(on)) {
        isCircular = true;
        return;
      }
      open.add(on);
      path.push({ on, next: followers(on, areas) });
    };
    enter(start);
    for (let step = path.at(-1); step; step = path.at(-1)) {
      const next = step.next.next();
      if (!next.done) {
        enter(next.value);
        continue;
      }
      path.pop();
      open.delete(step.on);
      done.add(step.on);
      if (!isArea(step.on)) lastFirst.push(step.on);
    }
  }
  return { formulas: lastFirst.reverse(), isCircular };
}

interface Step<Formula> {
  readonly on: Formula | ReadArea<Formula>;
  readonly next: Iterator<Formula | ReadArea<Formula>>;
}

const isArea = <Formula>(
  on: Formula | ReadArea<Formula>,
): on is ReadArea<Formula> =>
  typeof on === "object" && on !== null && "readers" in on;

const followers = <Formula extends Placed>(
  on: Formula | ReadArea<Formula>,
  areas: ReadAreas<Formula>,
): Iterator<Formula | ReadArea<Formula>> =>
  (isArea(on) ? on.readers : areas.at(on.sheet, on.row, on.column))[
    Symbol.iterator
  ]();
