import normal from "@stdlib/stats-base-dists-normal-quantile";
import student from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { normalQuantile } from "../../../src/trade/contents/normal-quantile";
import { tQuantile } from "../../../src/trade/contents/t-quantile";
import { near } from "../quantities";

/** An independent library of statistics gives the expected values. */
const theirNormal = (shareAbove: number): number => -normal(shareAbove, 0, 1);
const theirT = (chance: number, degrees: number): number =>
  student(1 - chance / 2, degrees);

describe("the normal quantile", () => {
  // Nearer to 0 the library itself loses digits: it works from the difference to 1.
  test.each([
    0.5, 0.4999, 0.4, 0.25, 0.1, 0.05, 0.02276, 0.02274, 0.01, 0.005, 0.001,
    0.0001, 0.00001,
  ])("with a share of %d above it is the library's to 1e-9", (share) => {
    expect(
      Math.abs(normalQuantile(share) - theirNormal(share)),
    ).toBeLessThanOrEqual(1e-9);
  });

  test("agrees for any risk, and falls as the risk grows", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.00001, max: 0.49, noNaN: true }),
        (share) => {
          const ours = normalQuantile(share);
          return (
            Math.abs(ours - theirNormal(share)) <= 1e-9 &&
            normalQuantile(share * 1.02) < ours
          );
        },
      ),
    );
  });

  test("for the smallest risks it lies between the bounds of Mills' ratio", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 300 }), (power) => {
        const share = 10 ** -power;
        const z = normalQuantile(share);
        const height = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
        return (
          (height * z) / (z * z + 1) < share * (1 + 1e-9) &&
          share < (height / z) * (1 + 1e-9)
        );
      }),
    );
  });
});

describe("Student's t quantile", () => {
  test.each([0.05, 0.01])(
    "at a two-sided chance of %d is the library's to 1e-9 for every sample to 1,000",
    (chance) => {
      for (let degrees = 1; degrees < 1000; degrees += 1)
        expect(near(tQuantile(chance, degrees), theirT(chance, degrees))).toBe(
          true,
        );
    },
  );

  test("agrees for any chance", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0005, max: 0.9, noNaN: true }),
        fc.integer({ min: 1, max: 400 }),
        (chance, degrees) =>
          near(tQuantile(chance, degrees), theirT(chance, degrees)),
      ),
    );
  });

  test("comes down to the normal quantile as the sample grows", () => {
    // The first term of the difference is (z³ + z) ÷ 4ν.
    const z = normalQuantile(0.025);
    const ahead = tQuantile(0.05, 9_999) - z;
    expect(ahead * 9_999 * 4).toBeCloseTo(z ** 3 + z, 2);
  });
});
