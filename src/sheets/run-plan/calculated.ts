import type { Line } from "../model";

/** A line that follows from a formula. */
export function calculated(
  name: string,
  label: string,
  said: {
    readonly formula: string;
    readonly unit?: string;
    readonly format?: string;
  },
): Line {
  const { formula, ...rest } = said;
  return { name, label, role: "calculated", content: { formula }, ...rest };
}
