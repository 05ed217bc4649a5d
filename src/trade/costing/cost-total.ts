import { unusable } from "../../measures/cannot-answer";
import { as, type Money } from "../../measures/quantity";

export interface CostPart {
  readonly name: string | undefined;
  readonly amount: Money | undefined;
}

/** The sum of the parts. A part without an amount withholds the total and is named (#VALUE!): a blank is never zero. */
export function costTotal(parts: readonly CostPart[]): Money {
  const filled = parts.filter(
    ({ name, amount }) => name !== undefined || amount !== undefined,
  );
  const missing = filled.filter(({ amount }) => amount === undefined);
  if (missing.length > 0)
    throw unusable(`needs ${missing.map(({ name }) => name).join(", ")}`);
  const nameless = filled.find(({ name }) => name === undefined);
  if (nameless)
    throw unusable(
      `names: the amount ${nameless.amount} has no name beside it`,
    );
  return as<Money>(filled.reduce((sum, { amount }) => sum + (amount ?? 0), 0));
}
