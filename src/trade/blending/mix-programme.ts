import { solve } from "yalps";

/** Shares of lots, each from 0 to the most there is of it, that add up to a total and keep some limits. */
export interface Mix {
  readonly most: readonly number[];
  readonly total: number;
  readonly limits: readonly Limit[];
}

/** The figures of the lots, each times its share, add up to at least this; or to exactly this. */
export interface Limit {
  readonly figures: readonly number[];
  readonly atLeast: number;
  readonly exactly?: boolean;
}

/** What one more unit of the total, and of each limit, adds to the least cost. */
export interface ShadowPrices {
  readonly total: number;
  readonly limits: readonly number[];
}

/**
 * The solver takes anything nearer to 0 than this for 0, and rounds its answers to it. Shares, limits and costs are
 * brought near 1 before they come here, so that it is far above the noise of the arithmetic and far below a pound.
 */
const PRECISION = 1e-12;

/** A mix of 40 lots takes some 50 steps; a solver going in circles must not hold up a cell. */
const MOST_STEPS = 1000;

type Coefficients = readonly (readonly [string, number])[];
type Bounds = {
  readonly min?: number;
  readonly max?: number;
  readonly equal?: number;
};

/** The shares that make a sum of costs least, or undefined where no shares keep all limits. */
export function leastCost(
  mix: Mix,
  costs: readonly number[],
): readonly number[] | undefined {
  const { most, total, limits } = mix;
  if (limits.length === 0) return cheapestFirst(mix, costs);
  const there = most.flatMap((max, i) => (max > 0 ? [i] : []));
  const shares = there.map((i): readonly [string, Coefficients] => [
    `share ${i}`,
    [
      ["cost", costs[i] ?? 0],
      ["total", 1],
      [`most ${i}`, 1],
      ...limits.map(
        ({ figures }, l) => [`limit ${l}`, figures[i] ?? 0] as const,
      ),
    ],
  ]);
  const bounds: readonly (readonly [string, Bounds])[] = [
    ["total", { equal: total }],
    ...limits.map(
      ({ atLeast, exactly }, l) =>
        [
          `limit ${l}`,
          exactly ? { equal: atLeast } : { min: atLeast },
        ] as const,
    ),
    // A share is never above the total, so only smaller stocks need a row of their own.
    ...there
      .map((i) => [`most ${i}`, { max: most[i] ?? 0 }] as const)
      .filter(([, { max }]) => max < total),
  ];
  const found = optimum("minimize", shares, bounds);
  return found && costs.map((_, i) => found.get(`share ${i}`) ?? 0);
}

/** Where only what there is limits the shares: whole lots in turn, no search needed. */
function cheapestFirst(
  { most, total }: Mix,
  costs: readonly number[],
): readonly number[] | undefined {
  const shares = most.map(() => 0);
  let open = total;
  const order = most.map((_, i) => i);
  for (const i of order.sort((a, b) => (costs[a] ?? 0) - (costs[b] ?? 0))) {
    const share = Math.min(open, most[i] ?? 0);
    shares[i] = share;
    open -= share;
  }
  return open > PRECISION ? undefined : shares;
}

/** The prices that explain a least cost: the same question asked from its other side. Costs are 0 or more. */
export function shadowPrices(
  { most, total, limits }: Mix,
  costs: readonly number[],
): ShadowPrices | undefined {
  const perLot = (figures: (i: number) => number): Coefficients =>
    costs.map((_, i) => [`lot ${i}`, figures(i)]);
  const prices: readonly (readonly [string, Coefficients])[] = [
    ["up", [["worth", total], ...perLot(() => 1)]],
    ["down", [["worth", -total], ...perLot(() => -1)]],
    ...limits.map(
      ({ figures, atLeast }, l) =>
        [
          `limit ${l}`,
          [["worth", atLeast], ...perLot((i) => figures[i] ?? 0)],
        ] as readonly [string, Coefficients],
    ),
    ...most.map((max, i): readonly [string, Coefficients] => [
      `most ${i}`,
      [
        ["worth", -max],
        [`lot ${i}`, -1],
      ],
    ]),
  ];
  const found = optimum(
    "maximize",
    prices,
    costs.map((cost, i) => [`lot ${i}`, { max: cost }]),
  );
  return (
    found && {
      total: (found.get("up") ?? 0) - (found.get("down") ?? 0),
      limits: limits.map((_, l) => found.get(`limit ${l}`) ?? 0),
    }
  );
}

function optimum(
  direction: "minimize" | "maximize",
  variables: readonly (readonly [string, Coefficients])[],
  constraints: readonly (readonly [string, Bounds])[],
): ReadonlyMap<string, number> | undefined {
  const objective = direction === "minimize" ? "cost" : "worth";
  const attempt = (
    order: readonly (readonly [string, Coefficients])[],
  ): ReturnType<typeof solve<string, string>> =>
    solve(
      { direction, objective, constraints, variables: order },
      { precision: PRECISION, maxPivots: MOST_STEPS },
    );
  const first = attempt(variables);
  // Circles depend on the order of the columns.
  const found =
    first.status === "cycled" ? attempt([...variables].reverse()) : first;
  return found.status === "optimal" ? new Map(found.variables) : undefined;
}
