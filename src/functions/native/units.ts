import { unitNamed } from "../../measures/units";
import { decimal, pick } from "./formula";

/** Formula text to put after a value in this unit to make it the house unit: "*3.785411784". */
export const toUnit = (symbol: string): string =>
  `*${decimal(unitNamed(symbol).scale)}`;

/** Formula text to put after a value in the house unit to make it this unit. */
export const perUnit = (symbol: string): string =>
  `/${decimal(unitNamed(symbol).scale)}`;

/** The same for the unit that a text names. */
export const fromUnit = (choices: readonly string[], unit: string): string =>
  `/${pick(
    unit,
    choices.map((symbol) => [symbol, decimal(unitNamed(symbol).scale)]),
  )}`;
