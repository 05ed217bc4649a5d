import { functionNamed } from "../functions";
import { nativeCall } from "../functions/native-call";

/**
 * A formula in which every call of one of our functions is replaced by its equal in plain worksheet functions.
 * Throws where a function has none: a sheet must not be written portable then.
 */
export function nativeFormula(formula: string): string {
  let text = formula;
  for (;;) {
    const call = lastCall(text);
    if (!call) return text;
    const definition = functionNamed(call.name);
    if (!definition) throw new Error(`There is no function SYRUP.${call.name}`);
    text =
      text.slice(0, call.start) +
      nativeCall(definition, call.args) +
      text.slice(call.end);
  }
}

interface Call {
  readonly name: string;
  readonly args: readonly string[];
  readonly start: number;
  readonly end: number;
}

/** The last call begins after every other, so its own arguments hold no further call. */
function lastCall(text: string): Call | undefined {
  const outsideText = text.replace(/"(?:[^"]|"")*"/g, (quoted) =>
    " ".repeat(quoted.length),
  );
  const start = outsideText.lastIndexOf("SYRUP.");
  if (start < 0) return undefined;
  const open = outsideText.indexOf("(", start);
  const args: string[] = [];
  let depth = 0;
  let from = open + 1;
  for (let i = open; i < text.length; i += 1) {
    const letter = outsideText[i];
    if (letter === "(" || letter === "{" || letter === "[") depth += 1;
    if (letter === ")" || letter === "}" || letter === "]") depth -= 1;
    const ends = depth === 0;
    if ((letter === "," && depth === 1) || ends) {
      args.push(text.slice(from, i).trim());
      from = i + 1;
    }
    if (ends)
      return {
        name: text.slice(start + "SYRUP.".length, open),
        args: args.length === 1 && args[0] === "" ? [] : args,
        start,
        end: i + 1,
      };
  }
  throw new Error(`A bracket is missing in ${text}`);
}
