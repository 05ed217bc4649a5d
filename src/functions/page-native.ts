import type { Definition } from "./define";
import { nativeCall } from "./native-call";
import { code, formulaBlock } from "./page-markdown";

/** The native form with the names of the arguments where the references go, or why there is none. */
export function nativeWords(definition: Definition): string {
  if (!definition.native) return `There is none: ${definition.noNative ?? ""}.`;
  const names = Object.keys(definition.args);
  const open = Object.entries(definition.args).flatMap(([name, term]) =>
    "otherwise" in term && term.otherwise === undefined ? [name] : [],
  );
  return [
    "The same answer in plain worksheet functions, for a sheet that is opened where this add-in is not. Put a cell, a range or a number where an argument's name stands, each a plain number in the unit of the table above. Nothing checks the limits here.",
    formulaBlock(nativeFormula(definition, names)),
    ...(definition.nativeRefuses ? [definition.nativeRefuses] : []),
    ...open.flatMap((name) => [
      `Without ${code(name)}:`,
      formulaBlock(
        nativeFormula(
          definition,
          names.map((other) => (other === name ? "" : other)),
        ),
      ),
    ]),
  ].join("\n\n");
}

/** The native form as it stands in a cell. */
export const nativeFormula = (
  definition: Definition,
  texts: readonly string[],
): string => `=${withoutOuter(nativeCall(definition, texts))}`;

/** The formula without brackets around the whole of it. */
function withoutOuter(formula: string): string {
  let open = 0;
  for (const [i, letter] of [...formula].entries()) {
    if (letter === "(") open += 1;
    if (letter === ")") open -= 1;
    if (open === 0 && i < formula.length - 1) return formula;
  }
  return withoutOuter(formula.slice(1, -1));
}
