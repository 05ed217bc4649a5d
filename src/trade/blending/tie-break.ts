import { leastCost, type Mix, shadowPrices } from "./mix-programme";

/** Costs, limits and shares near 1 that differ by less than this are taken for equal. */
const EQUAL = 1e-10;

/**
 * Of all mixes that cost as little as a cheapest one found, the one that draws the most from the first lot, of those the
 * one that draws the most from the second, and so on down the rows. Costs are 0 or more.
 */
export function firstInOrder(
  mix: Mix,
  costs: readonly number[],
  found: readonly number[],
): readonly number[] {
  const settled = settledShares(mix, costs);
  if (!settled) return found;
  const shares = [...settled.shares];
  let { open } = settled;
  let known = found;
  for (const [i, most] of open.most.entries()) {
    if (most === 0) continue;
    known = drawingMost(open, i, known);
    const share = Math.min(most, known[i] ?? 0);
    shares[i] = share;
    open = without(open, i, share);
  }
  return shares;
}

/** What all cheapest mixes have in common, and what they leave open. */
interface Settled {
  readonly shares: readonly number[];
  readonly open: Mix;
}

/**
 * A lot dearer than the shadow prices say is in no cheapest mix, a cheaper one is in all of them whole, and a limit that
 * has a price is met exactly by all of them.
 */
function settledShares(
  mix: Mix,
  costs: readonly number[],
): Settled | undefined {
  const prices = shadowPrices(mix, costs);
  if (!prices) return undefined;
  const dearer = costs.map(
    (cost, i) =>
      cost -
      mix.limits.reduce(
        (worth, { figures }, l) =>
          worth + (prices.limits[l] ?? 0) * (figures[i] ?? 0),
        prices.total,
      ),
  );
  const shares = mix.most.map((most, i) =>
    (dearer[i] ?? 0) < -EQUAL ? most : 0,
  );
  const limits = mix.limits.map((limit, l) => ({
    ...limit,
    exactly: (prices.limits[l] ?? 0) > EQUAL,
  }));
  const most = mix.most.map((all, i) => ((dearer[i] ?? 0) > EQUAL ? 0 : all));
  const open = shares.reduce<Mix>(
    (left, share, lot) => (share > 0 ? without(left, lot, share) : left),
    { ...mix, most, limits },
  );
  return { shares, open };
}

/** The mix that draws the most from one lot; a lot drawn whole already needs no search. */
function drawingMost(
  open: Mix,
  lot: number,
  known: readonly number[],
): readonly number[] {
  const limit = Math.min(open.most[lot] ?? 0, open.total);
  if (limit - (known[lot] ?? 0) <= EQUAL) return known;
  const wanted = open.most.map((_, i) => (i === lot ? -1 : 0));
  // The last bits of a sum may make a mix that is there look out of reach; then the one known so far stands.
  return leastCost(open, wanted) ?? known;
}

/** What is left to find once a lot's share is settled. */
const without = (mix: Mix, lot: number, share: number): Mix => ({
  most: mix.most.map((most, i) => (i === lot ? 0 : most)),
  total: mix.total - share,
  limits: mix.limits.map((limit) => ({
    ...limit,
    atLeast: limit.atLeast - share * (limit.figures[lot] ?? 0),
  })),
});
