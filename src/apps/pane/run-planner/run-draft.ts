import { readStart } from "../../../book/run-plan-start";
import { readBottles } from "../price/bottles";
import { sentenceOf } from "../open-book";

/** What is typed into the planner; it stays while other views are looked at. */
export interface RunDraft {
  /** The product the run size was typed for; another one starts from its own usual run. */
  readonly product: string | undefined;
  readonly bottles: string;
  /** "2026-11-26T07:00", or nothing. */
  readonly start: string;
  /** A line by name, or nothing for the cheapest. */
  readonly line: string;
}

export const emptyRun: RunDraft = {
  product: undefined,
  bottles: "",
  start: "",
  line: "",
};

export interface ReadRun {
  readonly bottles: number | undefined;
  readonly start: number | undefined;
  readonly line: string | undefined;
  /** What cannot be used, by field. */
  readonly trouble: { readonly bottles?: string; readonly start?: string };
}

export function readRun(draft: RunDraft): ReadRun {
  const bottles = read(() => readBottles(draft.bottles));
  const start = read(() =>
    draft.start.trim() === "" ? undefined : readStart(draft.start, "start"),
  );
  return {
    bottles: bottles.value,
    start: start.value,
    line: draft.line === "" ? undefined : draft.line,
    trouble: {
      ...(bottles.trouble === undefined ? {} : { bottles: bottles.trouble }),
      ...(start.trouble === undefined ? {} : { start: start.trouble }),
    },
  };
}

function read<T>(ask: () => T): {
  readonly value: T | undefined;
  readonly trouble?: string;
} {
  try {
    return { value: ask() };
  } catch (problem) {
    return { value: undefined, trouble: sentenceOf(problem) };
  }
}
