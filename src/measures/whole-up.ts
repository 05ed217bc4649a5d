import { roundHalfUp } from "./money";

/** The next whole number up. What lies within half a millionth of a whole is that whole: binary noise must not cost a piece. */
export const wholeUp = (value: number): number =>
  Math.ceil(roundHalfUp(value, 6));

/** The next whole number down, with the same care. */
export const wholeDown = (value: number): number =>
  Math.floor(roundHalfUp(value, 6));
