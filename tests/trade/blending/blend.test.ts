import fc from "fast-check";
import {
  as,
  type Brix,
  type Kilograms,
  type MoneyPerKg,
} from "../../../src/measures/quantity";
import {
  blendBrix,
  blendColor,
  blendPrice,
  type Part,
} from "../../../src/trade/blending/blend";
import { near } from "../quantities";

const parts = <F extends number>(
  rows: readonly (readonly [number, number])[],
): readonly Part<F>[] =>
  rows.map(([weight, figure]) => ({
    weight: as<Kilograms>(weight),
    figure: figure as F,
  }));

const anyParts = (low: number, high: number) =>
  fc
    .array(
      fc.tuple(
        fc.double({ min: 0.01, max: 20_000, noNaN: true }),
        fc.double({ min: low, max: high, noNaN: true }),
      ),
      { minLength: 1, maxLength: 20 },
    )
    .map((rows) => rows);

const total = (rows: readonly (readonly [number, number])[]): number =>
  rows.reduce((sum, [weight]) => sum + weight, 0);

/** Hand arithmetic throughout: 2,000 at 65.9 and 1,000 at 67.1. */
test("the Brix of a blend is not the mean of the two figures", () => {
  // (131,800 + 67,100) ÷ 3,000 = 66.3; the mean of the figures alone is 66.5.
  const blend = parts<Brix>([
    [2000, 65.9],
    [1000, 67.1],
  ]);
  expect(blendBrix(blend)).toBeCloseTo(66.3, 9);
});

test("solids are conserved, and money", () => {
  fc.assert(
    fc.property(anyParts(0, 85), (rows) => {
      const solids = rows.reduce((sum, [w, b]) => sum + w * b, 0);
      return (
        near(blendBrix(parts<Brix>(rows)) * total(rows), solids) &&
        near(blendPrice(parts<MoneyPerKg>(rows)) * total(rows), solids)
      );
    }),
  );
});

test("a blend lies between its extremes, in Brix and in colour", () => {
  fc.assert(
    fc.property(anyParts(1, 85), (rows) => {
      const figures = rows.map(([, figure]) => figure);
      const low = Math.min(...figures) * (1 - 1e-12);
      const high = Math.max(...figures) * (1 + 1e-12);
      for (const mean of [
        blendBrix(parts<Brix>(rows)),
        blendColor(parts<number>(rows)),
      ]) {
        expect(mean).toBeGreaterThanOrEqual(low);
        expect(mean).toBeLessThanOrEqual(high);
      }
    }),
  );
});

test("blending in two steps is blending in one", () => {
  fc.assert(
    fc.property(anyParts(1, 85), anyParts(1, 85), (first, second) => {
      const inTwo = (blend: typeof blendColor): number =>
        blend(
          parts<number>([
            [total(first), blend(parts<number>(first))],
            [total(second), blend(parts<number>(second))],
          ]),
        );
      const inOne = (blend: typeof blendColor): number =>
        blend(parts<number>([...first, ...second]));
      const asBrix: typeof blendColor = (all) => blendBrix(all as Part<Brix>[]);
      return (
        near(inTwo(blendColor), inOne(blendColor)) &&
        near(inTwo(asBrix), inOne(asBrix))
      );
    }),
  );
});

test("one dark drum darkens a blend more than an ordinary mean shows", () => {
  // √(80 × 20) = 40, the ordinary mean is 50.
  const equal = parts<number>([
    [500, 80],
    [500, 20],
  ]);
  expect(blendColor(equal)).toBeCloseTo(40, 9);
  fc.assert(
    fc.property(anyParts(1, 100), (rows) => {
      const ordinary = blendBrix(parts<Brix>(rows));
      return blendColor(parts<number>(rows)) <= ordinary * (1 + 1e-12);
    }),
  );
});

test("nothing that goes in is no blend", () => {
  expect(() => blendBrix(parts<Brix>([[0, 66]]))).toThrow(
    "weights: they sum to 0 lb",
  );
});
