import fc from "fast-check";
import highsLoader from "highs";
import { blendPlan } from "../../../src/trade/blending/least-cost";
import { anyProblem, type BlendProblem, costOf, drawsOf } from "./blends";

/**
 * The least-cost blend against HiGHS 1.15, an independent solver of linear programmes, which gets the problem as it is
 * stated (in pounds and dollars, not in shares) and to its tightest tolerances.
 */
const SEED = 20_261_125;
const PROBLEMS = 500;
const RELATIVE = 1e-7;

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});

const ordinary = fc.sample(
  anyProblem({ lots: { least: 2, most: 40 }, kinds: 500 }),
  { seed: SEED, numRuns: PROBLEMS },
);
/** Prices and figures that repeat, limits that are reached exactly. */
const tied = fc.sample(anyProblem({ lots: { least: 2, most: 40 }, kinds: 4 }), {
  seed: SEED,
  numRuns: PROBLEMS,
});

test.each([
  ["of 2-40 lots", ordinary],
  ["of lots with many equal prices and figures", tied],
])(
  "500 blends %s cost what the other solver finds, or have no answer for both",
  (_, problems) => {
    let planned = 0;
    for (const problem of problems) {
      const ours = blendPlan(problem.lots, problem.wanted);
      const theirs = leastCostByHighs(problem);
      const told = JSON.stringify(problem);
      if ((ours.kind === "plan") !== (theirs !== undefined))
        throw new Error(`${ours.kind}, but they find ${theirs}: ${told}`);
      if (theirs === undefined) continue;
      planned += 1;
      const cost = costOf(drawsOf(ours));
      if (Math.abs(cost - theirs) > RELATIVE * theirs)
        throw new Error(`${cost}, but they find ${theirs}: ${told}`);
    }
    // Both kinds of problem must be there for the comparison to say something.
    expect(planned).toBeGreaterThan(PROBLEMS / 5);
    expect(PROBLEMS - planned).toBeGreaterThan(PROBLEMS / 5);
  },
);

/** The least cost, or undefined where no blend keeps the limits. */
function leastCostByHighs({ lots, wanted }: BlendProblem): number | undefined {
  const sum = (figure: (i: number) => number): string =>
    lots.map((_, i) => `${signed(figure(i))} x${i}`).join(" ");
  const lot = (i: number): BlendProblem["lots"][number] => {
    const found = lots[i];
    if (!found) throw new Error(`No lot ${i}`);
    return found;
  };
  const { brixMin, brixMax, transmittanceMin, organicOnly } = wanted;
  const rows = [
    `weight: ${sum(() => 1)} = ${wanted.weight}`,
    `brixmin: ${sum((i) => lot(i).brix - brixMin)} >= 0`,
    ...(brixMax === undefined
      ? []
      : [`brixmax: ${sum((i) => lot(i).brix - brixMax)} <= 0`]),
    ...(transmittanceMin === undefined
      ? []
      : [
          `color: ${sum((i) => Math.log(lot(i).transmittance ?? 0) - Math.log(transmittanceMin))} >= 0`,
        ]),
  ];
  const bounds = lots.map(
    ({ available, organic }, i) =>
      `0 <= x${i} <= ${organicOnly && !organic ? 0 : available}`,
  );
  const { Status, ObjectiveValue } = highs.solve(
    [
      "Minimize",
      `cost: ${sum((i) => lot(i).price)}`,
      "Subject To",
      ...rows,
      "Bounds",
      ...bounds,
      "End",
    ].join("\n"),
    {
      output_flag: false,
      primal_feasibility_tolerance: 1e-10,
      dual_feasibility_tolerance: 1e-10,
      small_matrix_value: 1e-12,
    },
  );
  if (Status === "Optimal") return ObjectiveValue;
  if (Status === "Infeasible") return undefined;
  throw new Error(`The other solver says ${Status}`);
}

const signed = (value: number): string =>
  `${value < 0 ? "-" : "+"} ${Math.abs(value)}`;
