import * as fc from "fast-check";
import {
  as,
  type Hours,
  type Kilograms,
  type Money,
  type MoneyPerKg,
} from "../../../src/measures/quantity";
import {
  type BottleWay,
  bulkOrBottle,
  splitOf,
} from "../../../src/trade/pricing/bulk-or-bottle";
import { KG_PER_LB } from "../../../src/measures/units";

const way = (
  contribution: number,
  lbEach: number,
  hoursEach: number,
  name = "Wholesale",
): BottleWay => ({
  name,
  contribution: as<Money>(contribution),
  syrup: as<Kilograms>(lbEach * KG_PER_LB),
  labour: as<Hours>(hoursEach),
});
const free = (lb: number, hours?: number) => ({
  syrup: as<Kilograms>(lb * KG_PER_LB),
  labour: hours === undefined ? undefined : as<Hours>(hours),
});
const bulk = (perLb: number) => ({
  contribution: as<MoneyPerKg>(perLb / KG_PER_LB),
});

test("5,000 lb at 0.74 lb and 1.85 a bottle, 0.01 h each: 40 h make 4,000 bottles and the rest goes in bulk", () => {
  const split = splitOf(free(5000, 40), bulk(0.4), way(1.85, 0.74, 0.01));
  // 4,000 × 0.74 = 2,960 lb bottled, 2,040 lb in bulk: 4,000 × 1.85 + 2,040 × 0.40 = 8,216; all in bulk 2,000.
  expect(split.bottles).toBe(4000);
  expect(split.inBulk / KG_PER_LB).toBeCloseTo(2040, 9);
  expect(split.earns).toBeCloseTo(8216, 9);
  expect(split.more).toBeCloseTo(6216, 9);
  expect(split.limitedBy).toBe("the labour");
});

test("with 100 h, or no end of them, the syrup is the limit: 6,756 bottles", () => {
  // 5,000 ÷ 0.74 = 6,756.76.
  for (const hours of [100, undefined]) {
    const split = splitOf(free(5000, hours), bulk(0.4), way(1.85, 0.74, 0.01));
    expect([split.bottles, split.limitedBy]).toEqual([6756, "the syrup"]);
  }
});

test("where a pound earns more in bulk, nothing is bottled", () => {
  const split = splitOf(free(5000, 100), bulk(3), way(1.85, 0.74, 0.01));
  expect([split.bottles, split.more, split.limitedBy]).toEqual([
    0,
    0,
    "nothing: bulk earns more",
  ]);
});

test("the best of several ways is the one that earns most, not the one with the most a bottle", () => {
  // A gallon jug earns more a bottle and less a pound: 9.00 ÷ 11.1 = 0.81 against 1.85 ÷ 0.74 = 2.50.
  const { best } = bulkOrBottle(free(5000), bulk(0.4), [
    way(9, 11.1, 0.05, "Gallons"),
    way(1.85, 0.74, 0.01, "Small bottles"),
  ]);
  expect(best?.name).toBe("Small bottles");
  expect(bulkOrBottle(free(5000), bulk(0.4), []).best).toBeUndefined();
});

test("it never takes more syrup or labour than there is, and never earns less than all in bulk", () => {
  const amount = (max: number) =>
    fc.double({ min: 0, max, noNaN: true, noDefaultInfinity: true });
  fc.assert(
    fc.property(
      amount(100_000),
      amount(1000),
      amount(10),
      amount(20),
      fc.double({ min: 0.1, max: 12, noNaN: true }),
      fc.double({ min: 0.0001, max: 1, noNaN: true }),
      (lb, hours, perLb, each, lbEach, hoursEach) => {
        const split = splitOf(
          free(lb, hours),
          bulk(perLb),
          way(each, lbEach, hoursEach),
        );
        expect(split.bottled).toBeLessThanOrEqual(lb * KG_PER_LB + 1e-6);
        expect(split.labour).toBeLessThanOrEqual(hours + 1e-6);
        expect(split.bottled + split.inBulk).toBeCloseTo(lb * KG_PER_LB, 5);
        expect(split.more).toBeGreaterThanOrEqual(-1e-6 * (1 + split.earns));
      },
    ),
  );
});

test("a bottle without syrup and stocks below nothing are refused", () => {
  expect(() => splitOf(free(10), bulk(1), way(1, 0, 1))).toThrow("no syrup");
  expect(() => splitOf(free(-1), bulk(1), way(1, 1, 1))).toThrow("below 0");
});
