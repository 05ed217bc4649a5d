import type { Definition } from "../../../functions/define";

/** What a person has typed or taken for one call, by argument, and where the answer is to go. */
export interface FillIn {
  readonly typed: Readonly<Record<string, string>>;
  /** An address as typed; undefined follows the selected cell. */
  readonly target: string | undefined;
}

export const emptyFillIn: FillIn = { typed: {}, target: undefined };

/** The formula for argument texts in order: blanks at the end are dropped, blanks before that stay as empty arguments. */
export function formulaOf(
  { name }: Definition,
  texts: readonly string[],
): string {
  const last = texts.findLastIndex((text) => text !== "");
  return `=SYRUP.${name}(${texts.slice(0, last + 1).join(", ")})`;
}
