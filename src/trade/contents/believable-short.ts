import { unusable } from "../../measures/cannot-answer";
import type { ColdLitres } from "../../measures/quantity";

/** Refuses (#VALUE!) an allowed shortfall that would let an empty bottle pass: the two were swapped, or a unit is wrong. */
export function requireBelievableShort(
  allowedShort: ColdLitres,
  declared: ColdLitres,
): void {
  if (allowedShort >= declared)
    throw unusable(
      `allowed short: ${written(allowedShort)} is not less than the declared ${written(declared)}`,
    );
}

const written = (volume: ColdLitres): string =>
  `${Number((volume * 1000).toPrecision(9)).toLocaleString("en-US")} mL`;
