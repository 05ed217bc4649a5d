import { unusable } from "../../measures/cannot-answer";
import { as, type ColdLitres } from "../../measures/quantity";

/** Refuses (#VALUE!) when nothing was weighed. */
export function mean(volumes: readonly ColdLitres[]): ColdLitres {
  if (volumes.length === 0) throw unusable("volumes: no bottle was weighed");
  return as<ColdLitres>(
    volumes.reduce((sum, v) => sum + v, 0) / volumes.length,
  );
}

/** Standard deviation of a sample of two bottles or more. */
export function spread(volumes: readonly ColdLitres[]): ColdLitres {
  const middle = mean(volumes);
  const squares = volumes.reduce((sum, v) => sum + (v - middle) ** 2, 0);
  return as<ColdLitres>(Math.sqrt(squares / (volumes.length - 1)));
}

/** Whether a volume is below a limit; equal is not below, and a last binary digit must not decide. */
export const isBelow = (volume: ColdLitres, limit: number): boolean =>
  volume < limit - NOISE;

/** In litres: a millionth of a thousandth of a millilitre. */
const NOISE = 1e-12;
