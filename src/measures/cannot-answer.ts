/**
 * The one expected error. `input`: the value cannot be used, shown as `#VALUE!`.
 * `no-answer`: a fair question that has no answer, shown as `#N/A`.
 * Its message is one plain sentence for the person at the worksheet.
 */
export class CannotAnswer extends Error {
  constructor(
    readonly kind: "input" | "no-answer",
    sentence: string,
  ) {
    super(sentence);
    this.name = "CannotAnswer";
  }

  /** The worksheet error a host shows. */
  get code(): "#VALUE!" | "#N/A" {
    return this.kind === "input" ? "#VALUE!" : "#N/A";
  }
}

export const unusable = (sentence: string): CannotAnswer =>
  new CannotAnswer("input", sentence);
export const unanswerable = (sentence: string): CannotAnswer =>
  new CannotAnswer("no-answer", sentence);

/** The answer, or undefined where there is none to give; for callers to whom that is news, not an error. */
export function answerOrNone<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (problem) {
    if (problem instanceof CannotAnswer) return undefined;
    throw problem;
  }
}
