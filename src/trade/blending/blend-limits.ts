import type { Brix } from "../../measures/quantity";
import type { Limit } from "./mix-programme";

/** What a blend must keep. */
export interface BlendLimits {
  readonly brixMin: Brix;
  readonly brixMax: Brix | undefined;
  /** In %, above 0. */
  readonly transmittanceMin: number | undefined;
}

export type LimitName = "brix min" | "brix max" | "transmittance min";

/** A limit as the solver wants it: what each lot is better than asked, of which a mix needs at least 0. */
export interface BlendLimit extends Limit {
  readonly name: LimitName;
  readonly asked: number;
  /** °Brix or % of a mix that is so much better than asked. */
  readonly figureAt: (better: number) => number;
}

interface Figures {
  readonly brix: Brix;
  readonly transmittance: number | undefined;
}

/**
 * The limits over these lots, brought near 1. Transmission is taken by its logarithm: there a geometric mean is an
 * ordinary one, and the limit a straight line.
 */
export function limitsOver(
  lots: readonly Figures[],
  { brixMin, brixMax, transmittanceMin }: BlendLimits,
): readonly BlendLimit[] {
  const above = nearOne(lots.map(({ brix }) => brix - brixMin));
  const limits: BlendLimit[] = [
    {
      ...above,
      name: "brix min",
      asked: brixMin,
      figureAt: (better) => brixMin + better * above.scale,
    },
  ];
  if (brixMax !== undefined) {
    const below = nearOne(lots.map(({ brix }) => brixMax - brix));
    limits.push({
      ...below,
      name: "brix max",
      asked: brixMax,
      figureAt: (better) => brixMax - better * below.scale,
    });
  }
  if (transmittanceMin !== undefined) {
    const lighter = nearOne(
      lots.map(({ transmittance }) =>
        Math.log((transmittance ?? 0) / transmittanceMin),
      ),
    );
    limits.push({
      ...lighter,
      name: "transmittance min",
      asked: transmittanceMin,
      figureAt: (better) => transmittanceMin * Math.exp(better * lighter.scale),
    });
  }
  return limits;
}

interface NearOne {
  readonly figures: readonly number[];
  readonly atLeast: 0;
  readonly scale: number;
}

function nearOne(figures: readonly number[]): NearOne {
  const scale = Math.max(...figures.map(Math.abs)) || 1;
  return { figures: figures.map((f) => f / scale), atLeast: 0, scale };
}
