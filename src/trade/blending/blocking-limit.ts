import type { BlendLimit, LimitName } from "./blend-limits";
import { product } from "./exact-shares";
import { leastCost, type Mix } from "./mix-programme";

/** A limit, in °Brix or %. */
export interface Asked {
  readonly limit: LimitName;
  readonly asked: number;
}

/** A limit that cannot be met, and the nearest to it that can. */
export interface Blocking extends Asked {
  readonly reached: number;
  /** The limit that is kept meanwhile; without it the one named blocks by itself. */
  readonly beside: Asked | undefined;
}

/** What there is to mix, without limits. */
export type Supply = Omit<Mix, "limits">;

/** Limits near 1 that are missed by less than this are met. */
export const SLACK = 1e-10;

/** The limits that cannot be met even alone. */
export const blockingAlone = (
  supply: Supply,
  limits: readonly BlendLimit[],
): readonly Blocking[] => limits.flatMap((limit) => blocking(supply, limit));

/**
 * The limits that block each other where each alone can be met: one of Brix and the one of colour. Two limits of Brix
 * never do, nor do all three where every two of them can be met, for what mixes reach is convex.
 */
export function blockingTogether(
  supply: Supply,
  limits: readonly BlendLimit[],
): readonly Blocking[] {
  const color = limits.filter(({ name }) => name === "transmittance min");
  const brix = limits.filter(({ name }) => name !== "transmittance min");
  return color.flatMap((c) =>
    brix.flatMap((b) => [...blocking(supply, c, b), ...blocking(supply, b, c)]),
  );
}

function blocking(
  supply: Supply,
  limit: BlendLimit,
  beside?: BlendLimit,
): readonly Blocking[] {
  const kept = beside ? [{ ...beside, atLeast: -SLACK }] : [];
  const shares = leastCost(
    { ...supply, limits: kept },
    limit.figures.map((figure) => -figure),
  );
  const better = shares ? product(limit.figures, shares) : 0;
  if (better > -SLACK / 2) return [];
  return [
    {
      ...askedBy(limit),
      reached: limit.figureAt(better),
      beside: beside && askedBy(beside),
    },
  ];
}

const askedBy = ({ name, asked }: BlendLimit): Asked => ({
  limit: name,
  asked,
});
