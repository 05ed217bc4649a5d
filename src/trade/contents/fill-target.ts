import { unusable } from "../../measures/cannot-answer";
import { as, type ColdLitres, type Share } from "../../measures/quantity";
import { requireBelievableShort } from "./believable-short";
import { normalQuantile } from "./normal-quantile";

export interface Filling {
  readonly declared: ColdLitres;
  /** Standard deviation of the machine, bottle by bottle. */
  readonly spread: ColdLitres;
  readonly allowedShort: ColdLitres;
  /** Share of bottles that may come out beyond the allowed shortfall. */
  readonly risk: Share;
  readonly margin: ColdLitres;
}

export interface FillTarget {
  readonly target: ColdLitres;
  /** What keeps the average at the declared volume and the house margin. */
  readonly forAverage: ColdLitres;
  /** What keeps single bottles from being too short. */
  readonly forSingle: ColdLitres;
  /** Spreads between that target and the shortest bottle allowed. */
  readonly spreads: number;
}

/** The least average to aim at, for the average and for single bottles. Refuses (#VALUE!) a spread of nothing. */
export function fillTarget(filling: Filling): FillTarget {
  const { declared, spread, allowedShort, risk, margin } = filling;
  requireBelievableShort(allowedShort, declared);
  if (spread <= 0)
    throw unusable(
      "spread: bottles that are all alike were too few, or the scale too coarse; weigh more bottles",
    );
  const spreads = normalQuantile(risk);
  const forAverage = as<ColdLitres>(declared + margin);
  const forSingle = as<ColdLitres>(declared - allowedShort + spreads * spread);
  return {
    target: as<ColdLitres>(Math.max(forAverage, forSingle)),
    forAverage,
    forSingle,
    spreads,
  };
}
