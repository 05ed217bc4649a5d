import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Kilograms,
  type MoneyPerKg,
} from "../../measures/quantity";
import { type BlendLimit, type BlendLimits, limitsOver } from "./blend-limits";
import {
  type Blocking,
  blockingAlone,
  blockingTogether,
  SLACK,
  type Supply,
} from "./blocking-limit";
import { exactShares, keepsLimits, product } from "./exact-shares";
import { leastCost, type Mix } from "./mix-programme";
import { firstInOrder } from "./tie-break";

/** A lot that a blend may draw on. */
export interface BlendLot {
  readonly name: string;
  readonly available: Kilograms;
  readonly brix: Brix;
  readonly price: MoneyPerKg;
  /** In %, above 0; needed only where the blend has a limit for it. */
  readonly transmittance: number | undefined;
  /** Unknown counts as not organic. */
  readonly organic: boolean | undefined;
}

export interface WantedBlend extends BlendLimits {
  readonly weight: Kilograms;
  readonly organicOnly: boolean;
}

export interface BlendDraw {
  readonly lot: BlendLot;
  readonly weight: Kilograms;
}

export type BlendPlan =
  /** Only lots of which something is drawn, in the order they were given. */
  | { readonly kind: "plan"; readonly draws: readonly BlendDraw[] }
  | { readonly kind: "short"; readonly there: Kilograms }
  | { readonly kind: "blocked"; readonly by: readonly Blocking[] };

/** A cell that calculates must not be waited for; the search takes longer with every lot. */
const MOST_LOTS = 100;

/** As a part of the dearest price. */
const NOTHING = 1e-12;

/**
 * The cheapest blend of a weight within limits of Brix and colour, or what stands in its way. Of blends that cost the
 * same it is the one that draws the most from the first lot, of those the most from the second, and so on. Limits that
 * contradict each other, a lot without the transmission that a limit needs, and more than 100 lots are refused (#VALUE!).
 */
export function blendPlan(
  lots: readonly BlendLot[],
  wanted: WantedBlend,
): BlendPlan {
  const usable = usableLots(lots, wanted);
  const { weight } = wanted;
  const there = usable.reduce((sum, { available }) => sum + available, 0);
  // The last bits of a sum of pounds must not make a full draw short.
  if (weight - there > weight * 1e-12)
    return { kind: "short", there: as<Kilograms>(there) };
  const supply = supplyOf(usable, as<Kilograms>(Math.min(weight, there)));
  const limits = limitsOver(usable, wanted);
  const shares = cheapestShares(supply, limits, costsOf(usable));
  if ("by" in shares) return { kind: "blocked", ...shares };
  const draws = usable.map((lot, i) => {
    const share = shares[i] ?? 0;
    const whole = share === supply.most[i] && share < 1;
    return {
      lot,
      weight: whole ? lot.available : as<Kilograms>(share * weight),
    };
  });
  return { kind: "plan", draws: draws.filter((draw) => draw.weight > 0) };
}

/** The cheapest lot that makes the whole blend alone, within its limits, if one does. */
export function cheapestAlone(
  lots: readonly BlendLot[],
  wanted: WantedBlend,
): BlendLot | undefined {
  const able = usableLots(lots, wanted).filter(
    ({ available, brix, transmittance }) =>
      available >= wanted.weight &&
      brix >= wanted.brixMin &&
      brix <= (wanted.brixMax ?? brix) &&
      (transmittance ?? 0) >= (wanted.transmittanceMin ?? 0),
  );
  return able.reduce<BlendLot | undefined>(
    (best, lot) => (best && best.price <= lot.price ? best : lot),
    undefined,
  );
}

function usableLots(
  lots: readonly BlendLot[],
  { brixMin, brixMax, transmittanceMin, organicOnly }: WantedBlend,
): readonly BlendLot[] {
  if (brixMax !== undefined && brixMax < brixMin)
    throw unusable(
      `brix max: ${brixMax} is below brix min, ${brixMin}; swap them or leave brix max out`,
    );
  const unmeasured = lots.find((lot) => lot.transmittance === undefined);
  if (transmittanceMin !== undefined && unmeasured)
    throw unusable(
      `lots: "${unmeasured.name}" needs transmission, because transmittance min is given; measure it or take the lot out`,
    );
  const usable = lots.filter(
    ({ available, organic }) =>
      available > 0 && (!organicOnly || organic === true),
  );
  if (usable.length > MOST_LOTS)
    throw unusable(
      `lots: ${usable.length} lots to draw on; at most ${MOST_LOTS} in one blend, so leave out those you would not use`,
    );
  return usable;
}

/** As shares of the weight, so that the solver's precision means the same for a pail and for a tote. */
const supplyOf = (lots: readonly BlendLot[], weight: Kilograms): Supply => ({
  total: 1,
  most: lots.map(({ available }) => Math.min(1, available / weight)),
});

function costsOf(lots: readonly BlendLot[]): readonly number[] {
  const dearest = Math.max(...lots.map(({ price }) => price)) || 1;
  // What is nothing beside the dearest is nothing; left in, its digits would only upset the search.
  return lots.map(({ price }) => {
    const part = price / dearest;
    return part < NOTHING ? 0 : part;
  });
}

function cheapestShares(
  supply: Supply,
  limits: readonly BlendLimit[],
  costs: readonly number[],
): readonly number[] | { readonly by: readonly Blocking[] } {
  const alone = blockingAlone(supply, limits);
  if (alone.length > 0) return { by: alone };
  const found = firstCheapest({ ...supply, limits }, costs);
  if (found) return found;
  const together = blockingTogether(supply, limits);
  if (together.length > 0) return { by: together };
  // Limits that are reached to the last pound, and missed by the last bits.
  const eased = limits.map((limit) => ({ ...limit, atLeast: -SLACK }));
  return firstCheapest({ ...supply, limits: eased }, costs) ?? { by: [] };
}

/** The cheapest mix that draws the most from the first lots; found as it may be where noise would spoil the choice. */
function firstCheapest(
  mix: Mix,
  costs: readonly number[],
): readonly number[] | undefined {
  const found = leastCost(mix, costs);
  if (!found) return undefined;
  const exact = exactShares(mix, firstInOrder(mix, costs, found));
  const asCheap = product(costs, exact) - product(costs, found) <= SLACK;
  return asCheap && keepsLimits(mix, exact) ? exact : found;
}
