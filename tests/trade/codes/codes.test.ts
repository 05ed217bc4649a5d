import fc from "fast-check";
import type { DaySerial } from "../../../src/measures/quantity";
import { calendarOf, isoDate, serialOf } from "../../../src/measures/read-date";
import { bestBy } from "../../../src/trade/codes/best-by";
import { dayOfYear, lotCode } from "../../../src/trade/codes/lot-code";
import { palletise } from "../../../src/trade/codes/pallets";

const anyDay: fc.Arbitrary<DaySerial> = fc
  .tuple(fc.integer({ min: 1990, max: 2090 }), fc.integer({ min: 0, max: 364 }))
  .map(([year, n]) => (serialOf(year, 1, 1) + n) as DaySerial);

describe("lot codes", () => {
  test("1 March is day 60, and day 61 in a leap year", () => {
    expect(dayOfYear(serialOf(2026, 3, 1))).toBe(60);
    expect(dayOfYear(serialOf(2028, 3, 1))).toBe(61);
    expect(dayOfYear(serialOf(2100, 12, 31))).toBe(365);
  });

  test("day numbers agree with counting the months, one after the other", () => {
    const february = (year: number): number =>
      (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
    fc.assert(
      fc.property(anyDay, (day) => {
        const { year, month, day: date } = calendarOf(day);
        const months = [31, february(year), 31, 30, 31, 30, 31, 31, 30, 31, 30];
        const before = months.slice(0, month - 1).reduce((a, b) => a + b, 0);
        return dayOfYear(day) === before + date;
      }),
    );
  });

  test("a farm's own pattern keeps its own letters, and needs a day", () => {
    const day = serialOf(2026, 1, 5);
    const time = { hour: 7, minute: 5 };
    expect(lotCode(day, "B", "YYYY/DDD L hhmm", time)).toBe("2026/005 B 0705");
    expect(lotCode(day, "B", "YYDDD-L-HHMM", time)).toBe("26005-B-0705");
    expect(lotCode(day, "B", "YYDDD-L-HHMM")).toBe("26005-B");
    expect(() => lotCode(day, "B", "YY-L")).toThrow(/put DDD/);
  });
});

test("a best-by day is in the right month and never after the day it started from", () => {
  fc.assert(
    fc.property(anyDay, fc.integer({ min: 0, max: 60 }), (day, months) => {
      const from = calendarOf(day);
      const to = calendarOf(bestBy(day, months));
      expect(to.year * 12 + to.month).toBe(
        from.year * 12 + from.month + months,
      );
      expect(to.day).toBeLessThanOrEqual(from.day);
      if (from.day <= 28) expect(to.day).toBe(from.day);
    }),
  );
  expect(isoDate(bestBy(serialOf(2026, 1, 31), 1))).toBe("2026-02-28");
  expect(isoDate(bestBy(serialOf(2026, 12, 15), 0))).toBe("2026-12-15");
});

test("every bottle is on a full pallet, on the last one, or loose", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 100_000 }),
      fc.integer({ min: 1, max: 24 }),
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 8 }),
      (bottles, perCase, casesPerLayer, layers) => {
        const p = palletise(bottles, { perCase, casesPerLayer, layers });
        const perPallet = casesPerLayer * layers;
        expect(
          (p.fullPallets * perPallet + p.casesOnLast) * perCase +
            p.looseBottles,
        ).toBe(bottles);
        expect(p.looseBottles).toBeLessThan(perCase);
        expect(p.casesOnLast).toBeLessThan(perPallet);
      },
    ),
  );
});
