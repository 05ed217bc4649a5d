import fc from "fast-check";
import {
  as,
  type Brix,
  type Celsius,
  type ColdLitres,
  type Kilograms,
} from "../../src/measures/quantity";

/** Any syrup, any temperature, any amount the functions take. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
export const anyBrix = between(0, 85).map((v) => as<Brix>(v));
export const anyCelsius = between(0, 100).map((v) => as<Celsius>(v));
export const anyColdLitres = between(0.001, 10_000).map((v) =>
  as<ColdLitres>(v),
);
export const anyKilograms = between(0.001, 10_000).map((v) => as<Kilograms>(v));

export const near = (a: number, b: number, relative = 1e-9): boolean =>
  Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b), 1e-300);
