import fc from "fast-check";
import { as, type Brix, type Kilograms } from "../../../src/measures/quantity";
import { blendBrix } from "../../../src/trade/blending/blend";
import {
  blendPartner,
  blendShares,
  type Pair,
} from "../../../src/trade/blending/partner";
import { waterForBrix } from "../../../src/trade/syrup/water";
import { near } from "../quantities";

const pair = (a: number, b: number, target: number): Pair => ({
  brixA: as<Brix>(a),
  brixB: as<Brix>(b),
  target: as<Brix>(target),
});
const kg = (weight: number): Kilograms => as<Kilograms>(weight);

/** Two lots at least a hundredth apart, and a target well between them. */
const anyPair = fc
  .tuple(
    fc.integer({ min: 0, max: 8500 }),
    fc.integer({ min: 0, max: 8500 }),
    fc.double({ min: 0.01, max: 0.99, noNaN: true }),
  )
  .filter(([a, b]) => a !== b)
  .map(([a, b, part]) =>
    pair(a / 100, b / 100, a / 100 + ((b - a) / 100) * part),
  );
const anyWeight = fc.double({ min: 0.01, max: 50_000, noNaN: true }).map(kg);

test("the weight found brings the blend to the target", () => {
  fc.assert(
    fc.property(anyWeight, anyPair, (weight, two) => {
      const blend = blendBrix([
        { weight, figure: two.brixA },
        { weight: blendPartner(weight, two), figure: two.brixB },
      ]);
      return near(blend, two.target, 1e-9);
    }),
  );
});

test("the shares add up to one and agree with the weights", () => {
  fc.assert(
    fc.property(anyWeight, anyPair, (weight, two) => {
      const { a, b } = blendShares(two);
      expect(a + b).toBe(1);
      expect(near(blendPartner(weight, two) / weight, b / a, 1e-8)).toBe(true);
    }),
  );
});

test("the lot that brings A to the target is brought there by A", () => {
  fc.assert(
    fc.property(anyWeight, anyPair, (weight, two) => {
      const back = pair(two.brixB, two.brixA, two.target);
      return near(blendPartner(blendPartner(weight, two), back), weight, 1e-8);
    }),
  );
});

test("water is a lot of 0 °Bx", () => {
  fc.assert(
    fc.property(
      anyWeight,
      fc.double({ min: 60, max: 85, noNaN: true }),
      fc.double({ min: 20, max: 59, noNaN: true }),
      (weight, brix, target) =>
        near(
          blendPartner(weight, pair(brix, 0, target)),
          waterForBrix(weight, as<Brix>(brix), as<Brix>(target)),
          1e-9,
        ),
    ),
  );
});

test.each([
  [65.9, 66.2, "both lots are below 66.5"],
  [66.9, 66.8, "both lots are above 66.5"],
  [66, 66, "both lots are below 66.5"],
  [67, 67, "both lots are above 66.5"],
  [66.5, 66.5, "both lots are at 66.5 already"],
])("lots at %d and %d do not make 66.5: %s", (a, b, sentence) => {
  expect(() => blendPartner(kg(1000), pair(a, b, 66.5))).toThrow(sentence);
  expect(() => blendShares(pair(a, b, 66.5))).toThrow(sentence);
});

test("a lot at the target itself does not bring another there, but is a blend of its own", () => {
  expect(() => blendPartner(kg(1000), pair(65.9, 66.5, 66.5))).toThrow(
    "lot B is at 66.5 itself",
  );
  expect(blendShares(pair(65.9, 66.5, 66.5))).toEqual({ a: 0, b: 1 });
});

test("a lot A at the target needs nothing of B", () => {
  expect(blendPartner(kg(1000), pair(66.5, 67, 66.5))).toBe(0);
  expect(blendPartner(kg(1000), pair(66.5, 66, 66.5))).toBeCloseTo(0, 12);
});
