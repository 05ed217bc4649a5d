import type { Mix } from "./mix-programme";

/** Shares nearer to nothing, or to all there is, than this are meant to be it; so are limits nearer to being met exactly. */
const NEAR = 1e-9;

/**
 * The shares of a mix without the solver's rounding. Only a few lots are drawn in part; what they give follows from the
 * total and from the limits that are met exactly. Shares that do not follow stay as they were found.
 */
export function exactShares(
  mix: Mix,
  found: readonly number[],
): readonly number[] {
  const snapped = found.map((share, i) => {
    const most = mix.most[i] ?? 0;
    return share < NEAR ? 0 : share > most - NEAR ? most : share;
  });
  const inPart = snapped.flatMap((share, i) =>
    share > 0 && share < (mix.most[i] ?? 0) ? [i] : [],
  );
  const solved = solution(equations(mix, snapped, inPart), inPart.length);
  if (!solved) return found;
  const exact = snapped.map((share, i) => solved[inPart.indexOf(i)] ?? share);
  return keepsLimits(mix, exact) ? exact : found;
}

/** Whether shares keep within what there is and within the limits, but for the last bits. */
export const keepsLimits = (mix: Mix, shares: readonly number[]): boolean =>
  shares.every((share, i) => share >= 0 && share <= (mix.most[i] ?? 0)) &&
  Math.abs(sum(shares) - mix.total) <= NEAR &&
  mix.limits.every(
    ({ figures, atLeast }) => product(figures, shares) - atLeast >= -NEAR / 100,
  );

/** One row for the total and each limit that is met exactly: the figures of the lots drawn in part, then what is open. */
function equations(
  { total, limits }: Mix,
  shares: readonly number[],
  inPart: readonly number[],
): number[][] {
  const whole = shares.map((share, i) => (inPart.includes(i) ? 0 : share));
  const met = limits.filter(
    ({ figures, atLeast }) =>
      Math.abs(product(figures, shares) - atLeast) <= NEAR,
  );
  return [{ figures: shares.map(() => 1), atLeast: total }, ...met].map(
    ({ figures, atLeast }) => [
      ...inPart.map((i) => figures[i] ?? 0),
      atLeast - product(figures, whole),
    ],
  );
}

/** Elimination with the largest pivot of each column; undefined where the rows do not settle every unknown. */
function solution(
  rows: number[][],
  unknowns: number,
): readonly number[] | undefined {
  const open = [...rows];
  const settled: number[][] = [];
  for (let column = 0; column < unknowns; column += 1) {
    const size = (row: number[]): number => Math.abs(row[column] ?? 0);
    const pivot = open.reduce((a, b) => (size(b) > size(a) ? b : a), []);
    if (size(pivot) < NEAR) return undefined;
    open.splice(open.indexOf(pivot), 1);
    const unit = pivot.map((value) => value / (pivot[column] ?? 1));
    for (const row of [...open, ...settled]) {
      const times = row[column] ?? 0;
      for (const [c, value] of unit.entries())
        row[c] = (row[c] ?? 0) - times * value;
    }
    settled.push(unit);
  }
  return settled.map((row) => row[unknowns] ?? 0);
}

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);

export const product = (
  figures: readonly number[],
  shares: readonly number[],
): number =>
  figures.reduce((total, figure, i) => total + figure * (shares[i] ?? 0), 0);
