import Big from "big.js";
import fc from "fast-check";
import {
  allocate,
  amountInCents,
  roundHalfUp,
  toCents,
} from "../../src/measures/money";
import { as, type Money } from "../../src/measures/quantity";

const cents = (amount: number): number => Math.round(amount * 100);

// Half away from zero, as a worksheet's ROUND does it.
test.each([
  [1.005, 1.01],
  [2.675, 2.68],
  [-1.005, -1.01],
  [0.125, 0.13],
  [1.0049999, 1],
  [1320.9 * 8.95, 11822.06],
  [0, 0],
  [-0.004, -0],
])("%d rounds to %d", (amount, rounded) => {
  expect(toCents(amount)).toBeCloseTo(rounded, 12);
});

test("a half of any cent rounds away from zero", () => {
  fc.assert(
    fc.property(fc.integer({ min: -10_000_000, max: 10_000_000 }), (n) => {
      const half = Number(`${n}.5`) / 100;
      return (
        cents(toCents(half)) === (n < 0 || Object.is(n, -0) ? n - 1 : n + 1) ||
        n === 0
      );
    }),
  );
});

test("most figures are rounded in binary, and all of them as exact decimals round them", () => {
  // The general decimal library big.js rounds what 15 significant digits say, half away from zero.
  const exact = (value: number, places: number): number =>
    Number(
      new Big(value.toPrecision(15)).round(places, Big.roundHalfUp).toString(),
    );
  const written = fc
    .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.nat(7))
    .map(([digits, places]) => Number(`${digits}e-${places}`));
  const nearHalf = fc
    .tuple(
      fc.integer({ min: 0, max: 99_999_999 }),
      fc.integer({ min: -40, max: 40 }),
    )
    .map(([n, steps]) => (n + 0.5) * (1 + steps * 2 ** -53));
  const anyFigure = fc.oneof(
    written,
    nearHalf,
    fc.double({ noNaN: true, noDefaultInfinity: true }),
  );
  fc.assert(
    fc.property(anyFigure, fc.nat(6), (value, places) => {
      const figure = value / 10 ** (places % 3);
      expect(roundHalfUp(figure, places)).toBe(exact(figure, places));
    }),
    { numRuns: 3000 },
  );
  fc.assert(
    fc.property(
      fc.array(written, { minLength: 1, maxLength: 3 }),
      fc.constantFrom(1, 66, 2, 0.45359237),
      (times, by) => {
        const product = times
          .reduce((all, one) => all.times(new Big(one)), new Big(1))
          .div(new Big(by))
          .round(2, Big.roundHalfUp);
        expect(amountInCents(times, by)).toBe(Number(product.toString()));
      },
    ),
    { numRuns: 3000 },
  );
});

test("rounding is never off by more than half a unit of its last place", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.integer({ min: 0, max: 4 }),
      (value, places) =>
        Math.abs(roundHalfUp(value, places) - value) <=
        0.5 * 10 ** -places + Math.abs(value) * 1e-14,
    ),
  );
});

describe("a total is split by largest remainder", () => {
  test("a hundred dollars over three", () => {
    expect(allocate(as(100), [1, 1, 1])).toEqual([33.34, 33.33, 33.33]);
  });

  test("the cents left go to the largest remainders", () => {
    // 10.00 over 1 : 2 : 4 is 1.428…, 2.857…, 5.714…; the two cents left go to 1.42|8 and 2.85|7.
    expect(allocate(as(10), [1, 2, 4])).toEqual([1.43, 2.86, 5.71]);
  });

  test("a credit is split like a charge", () => {
    expect(allocate(as(-100), [1, 1, 1])).toEqual([-33.34, -33.33, -33.33]);
  });

  test("drivers that are negative or sum to nothing are refused", () => {
    expect(() => allocate(as(1), [1, -1])).toThrow(
      "drivers: a driver is negative",
    );
    expect(() => allocate(as(1), [0, 0])).toThrow(/drivers: they sum to 0/);
  });

  const totals = fc
    .integer({ min: -1_000_000_00, max: 1_000_000_00 })
    .map((c) => as<Money>(c / 100));
  const drivers = fc
    .array(
      fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1e6, noNaN: true })),
      { minLength: 1, maxLength: 30 },
    )
    .filter((d) => d.some((x) => x > 0));

  test("the parts sum to the total to the cent", () => {
    fc.assert(
      fc.property(
        totals,
        drivers,
        (total, by) =>
          allocate(total, by).reduce((sum, part) => sum + cents(part), 0) ===
          cents(total),
      ),
    );
  });

  test("no part is a cent or more away from its exact share, and a driver of 0 pays nothing", () => {
    fc.assert(
      fc.property(totals, drivers, (total, by) => {
        const sum = by.reduce((a, b) => a + b, 0);
        return allocate(total, by).every((part, i) => {
          const exact = (total * (by[i] ?? 0)) / sum;
          return (
            Math.abs(part - exact) < 0.01 + 1e-7 && (by[i] !== 0 || part === 0)
          );
        });
      }),
    );
  });
});
