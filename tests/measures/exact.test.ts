import fc from "fast-check";
import { leftOf, withoutNoise } from "../../src/measures/exact";
import { inOrderOfDays } from "../../src/measures/in-order-of-days";
import { amountInCents } from "../../src/measures/money";
import { as, type DaySerial } from "../../src/measures/quantity";
import { KG_PER_LB } from "../../src/measures/units";

test("pounds turned into kilograms and back are the pounds that were typed", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99_999_999 }),
      fc.integer({ min: 0, max: 4 }),
      (digits, places) => {
        const typed = digits / 10 ** places;
        return withoutNoise((typed * KG_PER_LB) / KG_PER_LB) === typed;
      },
    ),
  );
});

test("parts that add up to the whole leave exactly nothing", () => {
  // In binary 0.3 − 0.1 − 0.1 − 0.1 is −2.8e-17.
  expect(leftOf(0.3, [0.1, 0.1, 0.1])).toBe(0);
  expect(leftOf(100, [])).toBe(100);
  expect(leftOf(1, [1.5])).toBe(-0.5);
});

test("an amount is rounded once, at the end, a half up", () => {
  // 1,320.9 × 8.95 = 11,822.055; 100 × 3 × 65.9 ÷ 66 = 299.5454…; 1.15 × 0.1 ÷ 2 = 0.0575.
  expect(amountInCents([1320.9, 8.95])).toBe(11_822.06);
  expect(amountInCents([100, 3, 65.9], 66)).toBe(299.55);
  expect(amountInCents([1.15, 0.1], 2)).toBe(0.06);
});

test("rows come in order of days, those of one day as they stand, as a stable sort has them", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 2_958_465 })),
      fc.integer({ min: 1, max: 5 }),
      (days, few) => {
        const rows = days.map((day, place) => ({
          day: as<DaySerial>((day % few) + (day > 2_000_000 ? day : 0)),
          place,
        }));
        expect(inOrderOfDays(rows, ({ day }) => day)).toEqual(
          [...rows].sort((a, b) => a.day - b.day),
        );
      },
    ),
  );
});
