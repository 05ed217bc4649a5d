import { functions } from "../functions";
import { answer } from "../functions/answer";
import type { Args, Definition } from "../functions/define";
import type {
  WorksheetArgument,
  WorksheetFunction,
} from "../hosts/grid/worksheet-function";

/** Every worksheet function as the grid takes it, on screen and without one. */
export const gridFunctions: readonly WorksheetFunction[] =
  functions.map(gridFunction);

function gridFunction(definition: Definition): WorksheetFunction {
  return {
    name: definition.name,
    summary: definition.summary,
    args: Object.entries(definition.args).map(gridArgument),
    answer: (raw) => answer(definition, raw),
  };
}

function gridArgument([name, term]: [string, Args[string]]): WorksheetArgument {
  const unit = "unit" in term && term.unit !== "" ? `, in ${term.unit}` : "";
  return {
    name,
    detail: `${term.about}${unit}`,
    example: term.example,
    optional: "otherwise" in term,
    range: term.kind === "list" || term.kind === "rows",
  };
}
