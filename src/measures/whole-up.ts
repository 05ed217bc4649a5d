import { roundHalfUp } from "./money";

/**
 * The next whole number up. What lies within half a millionth of a whole is that whole: binary noise must not cost a piece.
 * What is beyond every number stays so, for the caller to refuse.
 */
export const wholeUp = (value: number): number =>
  Number.isFinite(value) ? Math.ceil(roundHalfUp(value, 6)) : value;
