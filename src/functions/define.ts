import type { Term, ValueOf } from "../terms/term";

/** What a worksheet cell can hold as an answer. */
export type Answer = number | string | boolean;
export type Answers = readonly (readonly Answer[])[];

/** A raw argument as a host hands it over: a cell, or rows of cells. Blank and omitted are null or undefined. */
export type Raw = unknown;

export interface Example {
  readonly args: readonly Raw[];
  readonly gives: Answer | Answers;
  /** Largest difference allowed for a number; without it the numbers must agree to 1e-9 relative. */
  readonly within?: number;
  /** Where the expected value comes from. */
  readonly source: string;
}

export type Family =
  | "Syrup"
  | "Filling"
  | "Blending"
  | "Lines and runs"
  | "Cost"
  | "Price"
  | "Net contents"
  | "Totes and codes";

export type Args = Readonly<
  Record<string, Term & { readonly otherwise?: number | string | undefined }>
>;
export type Values<A extends Args> = { readonly [K in keyof A]: ValueOf<A[K]> };

/** The whole of a worksheet function in one object; everything that shows or runs it is derived from this. */
export interface FunctionDefinition<A extends Args> {
  /** The name after `SYRUP.`; never changes after release. */
  readonly name: string;
  readonly family: Family;
  /** One sentence of at most 120 characters with a full stop. */
  readonly summary: string;
  /** The question a packer asks that this answers, for the index by question. */
  readonly question: string;
  readonly args: A;
  /** `spills` names the columns of an answer of several cells. */
  readonly gives: {
    readonly about: string;
    readonly unit: string;
    readonly spills?: readonly string[];
  };
  /** Ids of standards/sources. */
  readonly basis: readonly string[];
  readonly uncertainty?: string;
  /** The caution shown where syrup is hot, or where a person must measure for themselves. */
  readonly caution?: string;
  readonly notes?: readonly string[];
  /** At least one. */
  readonly examples: readonly [Example, ...Example[]];
  /**
   * An equal formula in plain worksheet functions from before 2019, without "=", for argument texts that are already
   * safe to put anywhere (references, numbers or bracketed formulas). An argument left out arrives as its default.
   */
  readonly native?: (args: { readonly [K in keyof A]: string }) => string;
  /** A sentence on fair questions that `native` gives #N/A for and the function answers. */
  readonly nativeRefuses?: string;
  /** Where `native` is missing: why, as it goes on after "There is none: ". */
  readonly noNative?: string;
  readonly compute: (values: Values<A>) => Answer | Answers;
  /** One line of arithmetic in trade words with the figures used. */
  readonly why: (values: Values<A>, answer: Answer | Answers) => string;
}

/** The same with the argument types put away, for everything that walks over all functions. */
export type Definition = FunctionDefinition<Args>;

export const defineFunction = <const A extends Args>(
  definition: FunctionDefinition<A>,
): Definition =>
  // The argument types are known only inside one definition; outside, `answer` makes the values that fit it.
  definition as unknown as Definition;
