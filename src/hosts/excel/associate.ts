import { answer } from "../../functions/answer";
import type { Definition } from "../../functions/define";
import { CannotAnswer } from "../../measures/cannot-answer";

/** Hands every function to Excel under its own name. Runs before Office is ready; Excel queues the associations. */
export function associateAll(definitions: readonly Definition[]): void {
  for (const definition of definitions)
    CustomFunctions.associate(definition.name, (...given: unknown[]) =>
      calculated(definition, given),
    );
}

function calculated(
  definition: Definition,
  given: readonly unknown[],
): unknown {
  // Excel adds a last argument of its own, the invocation, to those the function declares.
  const raw = given.slice(0, Object.keys(definition.args).length);
  try {
    return answer(definition, raw);
  } catch (problem) {
    throw worksheetError(definition, problem);
  }
}

function worksheetError(
  definition: Definition,
  problem: unknown,
): Error | CustomFunctions.Error {
  const refused = problem instanceof CannotAnswer;
  const says = refused
    ? problem.message
    : `SYRUP.${definition.name} has a fault of its own; the figures are not to blame`;
  // An Excel with no more than CustomFunctionsRuntime 1.1 has no errors to choose from: what is thrown is #VALUE! there.
  if (!hasErrors()) return new Error(says);
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  return new CustomFunctions.Error(
    refused && problem.kind !== "input" ? notAvailable : invalidValue,
    says,
  );
}

const hasErrors = (): boolean =>
  "Error" in CustomFunctions && "ErrorCode" in CustomFunctions;
