import fc from "fast-check";
import {
  costBridge,
  type SeasonCost,
} from "../../../src/trade/costing/cost-bridge";

const cost = (over: Partial<Record<keyof SeasonCost, number>> = {}) =>
  ({
    syrupPrice: 5,
    filled: 0.3,
    drawn: 0.32,
    materials: 1.5,
    labour: 0.2,
    heat: 0.01,
    overhead: 0.6,
    ownBills: 0,
    ...over,
  }) as unknown as SeasonCost;

const change = (before: SeasonCost, after: SeasonCost, name: string): number =>
  costBridge(before, after).steps.find((step) => step.name === name)?.change ??
  Number.NaN;

describe("worked by hand: a bottle before and after", () => {
  test("syrup 50 ¢ a kilogram dearer, at the 0.32 kg drawn before, is 16 ¢", () => {
    expect(
      change(cost(), cost({ syrupPrice: 5.5 }), "Syrup price"),
    ).toBeCloseTo(0.16, 12);
  });

  test("10 g more in the bottle at the new price of 5.50 is 5.5 ¢, and drawing no more is 5.5 ¢ less lost", () => {
    const after = cost({ syrupPrice: 5.5, filled: 0.31 });
    expect(change(cost(), after, "Fill")).toBeCloseTo(0.055, 12);
    expect(change(cost(), after, "Syrup lost and purged")).toBeCloseTo(
      -0.055,
      12,
    );
  });

  test("a bill that only this season has is its own step", () => {
    const after = cost({ ownBills: 0.4 });
    expect(change(cost(), after, "Bills only one season has")).toBeCloseTo(
      0.4,
      12,
    );
    expect(change(cost(), after, "Overheads of both seasons")).toBe(0);
  });
});

const anyCost = fc
  .record({
    syrupPrice: fc.double({ min: 1, max: 20, noNaN: true }),
    filled: fc.double({ min: 0.05, max: 6, noNaN: true }),
    drawn: fc.double({ min: 0.05, max: 6.5, noNaN: true }),
    materials: fc.double({ min: 0, max: 5, noNaN: true }),
    labour: fc.double({ min: 0, max: 3, noNaN: true }),
    heat: fc.double({ min: 0, max: 1, noNaN: true }),
    overhead: fc.double({ min: 0, max: 9, noNaN: true }),
    ownBills: fc.double({ min: 0, max: 9, noNaN: true }),
  })
  .map((parts) => cost(parts));

test("the steps lead from the cost before to the cost after, and back by the same way round", () => {
  fc.assert(
    fc.property(anyCost, anyCost, (before, after) => {
      const { steps, before: from, after: to } = costBridge(before, after);
      const sum = steps.reduce((total, step) => total + step.change, 0);
      expect(sum).toBeCloseTo(to - from, 9);
      const back = costBridge(after, before);
      expect(
        back.steps.reduce((total, step) => total + step.change, 0),
      ).toBeCloseTo(from - to, 9);
    }),
  );
});

test("a season against itself changes nothing", () => {
  fc.assert(
    fc.property(anyCost, (one) => {
      for (const step of costBridge(one, one).steps)
        expect(Math.abs(step.change)).toBe(0);
    }),
  );
});
