import { balancePounds } from "../../book/totes-lots";
import type { TruckPlan } from "../../book/truck-plan";
import type { Kilograms } from "../../measures/quantity";

/** The answer of `truck --json`; what was not asked is null. */
export interface TruckAnswer {
  readonly limitLb: number;
  readonly axleLimitLb: number | null;
  readonly spots: number | null;
  /** The gross weight totes are counted with, and whose it is. */
  readonly grossLb: number;
  readonly grossOf: string;
  readonly fits: {
    readonly totes: number;
    readonly byWeight: number;
    readonly byAxles: number | null;
    readonly byFloor: number | null;
    readonly binds: readonly string[];
  };
  readonly load: {
    readonly totes: number;
    readonly grossLb: number;
    /** Below 0 the load is over by so much. */
    readonly leftLb: number;
    readonly spotsLeft: number | null;
    readonly over: readonly string[];
    readonly riding: readonly string[];
    readonly plateLimitUnknown: readonly string[];
  } | null;
  readonly caution: string;
}

export const truckAnswer = (
  { limits, gross, grossOf, fit, load }: TruckPlan,
  caution: string,
): TruckAnswer => ({
  limitLb: balancePounds(limits.payload),
  axleLimitLb: poundsOrNone(limits.axles),
  spots: limits.spots ?? null,
  grossLb: balancePounds(gross),
  grossOf,
  fits: {
    totes: fit.totes,
    byWeight: fit.byWeight,
    byAxles: fit.byAxles ?? null,
    byFloor: fit.byFloor ?? null,
    binds: fit.binds,
  },
  load: load
    ? {
        totes: load.totes,
        grossLb: balancePounds(load.gross),
        leftLb: balancePounds(load.left),
        spotsLeft: load.spotsLeft ?? null,
        over: load.over,
        riding: load.riding,
        plateLimitUnknown: load.plateUnknown,
      }
    : null,
  caution,
});

const poundsOrNone = (weight: Kilograms | undefined): number | null =>
  weight === undefined ? null : balancePounds(weight);
