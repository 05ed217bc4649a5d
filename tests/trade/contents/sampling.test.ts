import fc from "fast-check";
import {
  type ContentsRule,
  sampleFactor,
  sampleSize,
  singlePlan,
} from "../../../src/trade/contents/sampling";
import { tQuantile } from "../../../src/trade/contents/t-quantile";

const anyRule = fc.constantFrom<ContentsRule>("US", "EU", "OIML");

describe("category A, from memory", () => {
  test.each([
    [1, 1],
    [2, 2],
    [11, 11],
    [12, 12],
    [250, 12],
    [251, 24],
    [3200, 24],
    [3201, 48],
    [1_000_000, 48],
  ])("of a lot of %d, %d are weighed", (lot, sample) => {
    expect(sampleSize(lot, "US")).toBe(sample);
  });

  test("one package may be beyond the allowed shortfall only above 3,200", () => {
    const lots = [1, 11, 250, 3200, 3201];
    expect(lots.map((lot) => singlePlan(lot, "US").allowed)).toEqual([
      0, 0, 0, 0, 1,
    ]);
  });

  // t(0.975, n − 1) ÷ √n by an independent script.
  const byScript = [
    [2, 8.98464],
    [3, 2.48414],
    [4, 1.59122],
    [5, 1.24166],
    [6, 1.04944],
    [7, 0.92485],
    [8, 0.83602],
    [9, 0.76867],
    [10, 0.71536],
    [11, 0.67181],
    [12, 0.63537],
    [24, 0.42226],
    [48, 0.29037],
  ] as const;

  test.each(byScript)("t over the root of %d is %d", (n, factor) => {
    expect(tQuantile(0.05, n - 1) / Math.sqrt(n)).toBeCloseTo(factor, 5);
  });

  test.each(byScript.filter(([n]) => n !== 48))(
    "the stored factor of %d is that one rounded",
    (n, factor) => {
      expect(sampleFactor(n, "US")).toEqual({
        factor: Number(factor.toFixed(3)),
        printed: true,
      });
    },
  );

  test("the stored factor of 48 is 0.291, not the 0.290 that is worked out", () => {
    expect(sampleFactor(48, "US")).toEqual({ factor: 0.291, printed: true });
  });

  test("between the printed sizes it is worked out", () => {
    // Student's t at 97.5 %, 15 degrees of freedom: 2.13145 in any table.
    const { factor, printed } = sampleFactor(16, "US");
    expect(printed).toBe(false);
    expect(factor * 4).toBeCloseTo(2.13145, 5);
  });
});

describe("R 87, from memory", () => {
  test.each([
    [100, 50, 3],
    [500, 50, 3],
    [501, 80, 5],
    [3200, 80, 5],
    [3201, 125, 7],
  ])("of a lot of %d, %d are weighed and %d may be short", (lot, n, short) => {
    expect(singlePlan(lot, "OIML")).toMatchObject({
      sample: n,
      allowed: short,
    });
  });

  test.each([
    [50, 0.379],
    [80, 0.295],
    [125, 0.234],
  ])("the factor of %d is %d, which t at 99.5 %% bears out", (n, factor) => {
    expect(sampleFactor(n, "OIML")).toEqual({ factor, printed: true });
    expect(tQuantile(0.01, n - 1) / Math.sqrt(n)).toBeCloseTo(factor, 3);
  });

  test("lots below 100 are not answered", () => {
    expect(() => sampleSize(99, "OIML")).toThrow(
      "lot size: the R 87 plans for lots below 100 are not known here",
    );
  });
});

test("one bottle has no factor under any rule", () => {
  fc.assert(
    fc.property(anyRule, (rule) => {
      expect(() => sampleFactor(1, rule)).toThrow("one bottle has no spread");
    }),
  );
});

test("more bottles allow less, and the EU always more than the US", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 2000 }), anyRule, (n, rule) => {
      // Two neighbours may agree to the third decimal that is printed.
      const next = sampleFactor(n + 1, rule).factor;
      return (
        next <= sampleFactor(n, rule).factor + 0.0007 &&
        sampleFactor(n, "EU").factor > sampleFactor(n, "US").factor
      );
    }),
  );
});

test("larger lots never ask for fewer bottles", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 5000 }),
      fc.integer({ min: 1, max: 5000 }),
      anyRule,
      (lot, more, rule) =>
        sampleSize(lot + more, rule) >= sampleSize(lot, rule),
    ),
  );
});
