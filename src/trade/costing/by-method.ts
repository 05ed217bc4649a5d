import type { Money } from "../../measures/quantity";

/** One figure for each way of valuing the syrup; undefined where it is withheld. */
export interface ByMethod<T = Money> {
  readonly replacement: T | undefined;
  readonly average: T | undefined;
  readonly oldestFirst: T | undefined;
}

/** The same question asked of each; what is withheld stays withheld. */
export const mapMethods = <A, B>(
  by: ByMethod<A>,
  make: (value: A, method: keyof ByMethod) => B | undefined,
): ByMethod<B> => {
  const one = (method: keyof ByMethod): B | undefined => {
    const value = by[method];
    return value === undefined ? undefined : make(value, method);
  };
  return {
    replacement: one("replacement"),
    average: one("average"),
    oldestFirst: one("oldestFirst"),
  };
};
