import fc from "fast-check";
import {
  as,
  type Brix,
  type Kilograms,
  type MoneyPerKg,
} from "../../../src/measures/quantity";
import type {
  BlendDraw,
  BlendLot,
  BlendPlan,
  WantedBlend,
} from "../../../src/trade/blending/least-cost";

export interface BlendProblem {
  readonly lots: readonly BlendLot[];
  readonly wanted: WantedBlend;
}

interface Steps {
  readonly lots: { readonly least: number; readonly most: number };
  /** How many different prices, and steps of Brix and transmission: few make ties. */
  readonly kinds: number;
}

const step = (from: number, to: number, kinds: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: 0, max: kinds })
    .map((n) => Number((from + ((to - from) * n) / kinds).toPrecision(8)));

/** Blends as a farm might ask for them: prices near each other, limits at or about what the lots can do. */
export const anyProblem = ({
  lots,
  kinds,
}: Steps): fc.Arbitrary<BlendProblem> =>
  fc
    .record({
      lots: fc.array(
        fc.record({
          available: step(0, 12_000, kinds * 2).map((v) => as<Kilograms>(v)),
          brix: step(64, 69, kinds).map((v) => as<Brix>(v)),
          price: step(1.5, 3, kinds).map((v) => as<MoneyPerKg>(v)),
          transmittance: step(8, 88, kinds),
          organic: fc.boolean(),
        }),
        { minLength: lots.least, maxLength: lots.most },
      ),
      weight: step(500, 20_000, kinds * 2).map((v) => as<Kilograms>(v)),
      brixMin: step(64, 68, kinds).map((v) => as<Brix>(v)),
      band: fc.option(step(0, 2, kinds), { nil: undefined }),
      transmittanceMin: fc.option(step(10, 75, kinds), { nil: undefined }),
      organicOnly: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
    })
    .map(({ lots, weight, brixMin, band, transmittanceMin, organicOnly }) => ({
      lots: lots.map((lot, i) => ({ ...lot, name: `lot ${i + 1}` })),
      wanted: {
        weight,
        brixMin,
        brixMax: band === undefined ? undefined : as<Brix>(brixMin + band),
        transmittanceMin,
        organicOnly,
      },
    }));

export const drawsOf = (plan: BlendPlan): readonly BlendDraw[] => {
  if (plan.kind !== "plan") throw new Error(`No plan: ${plan.kind}`);
  return plan.draws;
};

export const costOf = (draws: readonly BlendDraw[]): number =>
  draws.reduce((sum, { lot, weight }) => sum + weight * lot.price, 0);

export const weightOf = (draws: readonly BlendDraw[]): number =>
  draws.reduce((sum, { weight }) => sum + weight, 0);
