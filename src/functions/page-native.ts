import type { Definition } from "./define";
import { nativeCall } from "./native-call";
import { code, formulaBlock } from "./page-markdown";

/** The native form with the names of the arguments where the references go, or why there is none. */
export function nativeWords(definition: Definition): string {
  if (!definition.native) return sentenceWithout(definition);
  const names = Object.keys(definition.args);
  const open = Object.entries(definition.args).flatMap(([name, term]) =>
    "otherwise" in term && term.otherwise === undefined ? [name] : [],
  );
  return [
    "The same answer in plain worksheet functions, for a sheet that is opened where this add-in is not. Put a cell, a range or a number where an argument's name stands, each a plain number in the unit of the table above. Nothing checks the limits here.",
    formulaBlock(`=${withoutOuter(nativeCall(definition, names))}`),
    ...open.flatMap((name) => [
      `Without ${code(name)}:`,
      formulaBlock(
        `=${withoutOuter(
          nativeCall(
            definition,
            names.map((other) => (other === name ? "" : other)),
          ),
        )}`,
      ),
    ]),
  ].join("\n\n");
}

const sentenceWithout = (definition: Definition): string =>
  `There is none: ${whyNone(definition)}.`;

/** Why a function has no native form; its kind of answer tells. */
export function whyNone({ gives, examples }: Definition): string {
  if (gives.spills)
    return "the answer fills several cells, which one plain formula from before 2019 cannot do";
  return typeof examples[0].gives === "number"
    ? "the answer is found by trying values until they fit, which no plain formula does"
    : "text is taken apart and put together piece by piece, which no plain formula of a sensible length does";
}

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
