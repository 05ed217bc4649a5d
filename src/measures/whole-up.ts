import { roundHalfUp } from "./money";

/** The next whole number up. What lies within half a millionth of a whole is that whole: binary noise must not cost a piece. */
export const wholeUp = (value: number): number =>
  Math.ceil(roundHalfUp(value, 6));
