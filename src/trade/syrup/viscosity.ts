import type { Brix, Celsius } from "../../measures/quantity";
import { sucroseViscosity } from "../../standards/viscosity";

/** Viscosity in mPa·s of syrup taken as sucrose of equal Brix, 0-100 °C. Source: genotelle. */
export function viscosity(brix: Brix, temperature: Celsius): number {
  const { a, b, c, d, e } = sucroseViscosity;
  const x = brix / (1900 - 18 * brix);
  const p = (30 - temperature) / (91 + temperature);
  return 10 ** (a * x - b + p * (c + d * x ** e));
}
