import { functionNamed } from "../../src/functions";
import { explained } from "../../src/functions/answer";
import type { Answer, Answers } from "../../src/functions/define";

/** What a worksheet cell with this function shows, with its line of arithmetic. */
export function asked(
  name: string,
  args: readonly unknown[],
): { readonly answer: Answer | Answers; readonly why: string } {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`No function ${name}`);
  return explained(definition, args);
}
