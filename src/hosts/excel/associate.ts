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
): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  if (!(problem instanceof CannotAnswer))
    return new CustomFunctions.Error(
      invalidValue,
      `SYRUP.${definition.name} has a fault of its own; the figures are not to blame`,
    );
  return new CustomFunctions.Error(
    problem.kind === "input" ? invalidValue : notAvailable,
    problem.message,
  );
}
