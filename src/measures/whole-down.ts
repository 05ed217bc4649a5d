import { roundHalfUp } from "./money";

/**
 * The whole number at or below. What lies within half a millionth of a whole is that whole: binary noise must not take a
 * piece away. What is beyond every number stays so, for the caller to refuse.
 */
export const wholeDown = (value: number): number =>
  Number.isFinite(value) ? Math.floor(roundHalfUp(value, 6)) : value;
