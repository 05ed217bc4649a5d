/** What a function answers: one value, or rows of values that spill. */
export type WorksheetAnswer =
  | number
  | string
  | boolean
  | readonly (readonly (number | string | boolean)[])[];

export interface WorksheetArgument {
  readonly name: string;
  readonly detail: string;
  readonly example: string;
  readonly optional: boolean;
  /** Takes a rectangle. */
  readonly range: boolean;
}

/** A worksheet function as the grid needs it. The name has no namespace; the grid shows `SYRUP.NAME`. */
export interface WorksheetFunction {
  readonly name: string;
  readonly summary: string;
  readonly args: readonly WorksheetArgument[];
  /**
   * Raw arguments in order: blank or left out is null, a rectangle is rows of raw values, an error cell inside it is
   * `{ error: "#N/A" }`. Throws CannotAnswer with the sentence to show.
   */
  readonly answer: (raw: readonly unknown[]) => WorksheetAnswer;
}

export const namespace = "SYRUP";
