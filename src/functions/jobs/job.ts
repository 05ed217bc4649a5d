import type { Answer } from "../define";

/** A job of the office that one function answers as it stands. */
export interface DirectJob {
  readonly question: string;
  /** The function's name after `SYRUP.`. */
  readonly by: string;
}

/** A job that takes two or three functions, or a function and plain arithmetic, in one cell. */
export interface CombinedJob {
  readonly question: string;
  /** What stands on the sheet from A2 on, row by row; words in the first column say what stands beside them. */
  readonly cells: readonly (readonly (Answer | null)[])[];
  /** The formula, as it is typed into a cell beside them. */
  readonly formula: string;
  readonly gives: Answer;
  readonly unit: string;
  /** Largest difference allowed for a number; without it 1e-9 of it. */
  readonly within?: number;
  /** Where the expected answer comes from. */
  readonly source: string;
}

export type Job = DirectJob | CombinedJob;

export interface JobGroup {
  readonly title: string;
  readonly jobs: readonly Job[];
}
