/** Where a command reads and speaks: standard streams in use, arrays in tests. */
export interface Terminal {
  /** The project's own folder, for what is generated into it. */
  readonly root: string;
  readonly lines: () => AsyncIterable<string>;
  /** One line for the answer. */
  readonly say: (line: string) => void;
  /** One line beside the answer: a refusal, a finding, progress. */
  readonly complain: (line: string) => void;
}

/** Gives the exit code: 0, or 2 when the input could not be used. Throws CannotAnswer for a refusal in one sentence. */
export type Command = (
  args: readonly string[],
  terminal: Terminal,
) => Promise<0 | 2>;
