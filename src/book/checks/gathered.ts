import { fromHouse, unitNamed } from "../../measures/units";
import type { Finding } from "../finding";

/** One finding for all rows with the same trouble, placed at the first; none when there are no rows. */
export function gathered<R extends { readonly place: string }>(
  rows: readonly R[],
  says: {
    readonly column: string;
    readonly found: (rows: readonly R[]) => string;
    readonly meaning: string;
    readonly todo: string;
    /** Money that hangs on them; undefined where it cannot be said. */
    readonly atStake?: number | ((rows: readonly R[]) => number | undefined);
  },
): readonly Finding[] {
  const first = rows[0];
  if (first === undefined) return [];
  const stake =
    typeof says.atStake === "function" ? says.atStake(rows) : says.atStake;
  return [
    {
      where: `${first.place}, ${says.column}`,
      found: says.found(rows),
      meaning: says.meaning,
      todo: says.todo,
      ...(stake === undefined ? {} : { atStake: stake }),
    },
  ];
}

/** "1,230 lb" for a weight in kg. */
export const pounds = (kilograms: number): string =>
  `${figure(fromHouse(kilograms, unitNamed("lb")), 1)} lb`;

/** A figure with its thousands grouped and at most so many decimals. */
export const figure = (value: number, decimals: number): string =>
  value.toLocaleString("en-US", { maximumFractionDigits: decimals });

/** "18,030.38 USD" */
export const moneyText = (amount: number, currency: string): string =>
  `${amount.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 })} ${currency}`;
