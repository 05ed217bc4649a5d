import fc from "fast-check";
import { as, type Hours } from "../../../src/measures/quantity";
import { runClock, type Shift } from "../../../src/trade/lines/run-clock";

const hours = (value: number): Hours => as<Hours>(value);
/** 1,200 bottles on the small pair: 55 minutes and 1 h 40 min, four people. */
const small: Shift = { hours: hours(31 / 12), people: 4 };
const SEVEN = 46352 + 7 / 24;

test("2 h 35 min from seven is over at 9:35, in 10 h 20 min of crew-hours", () => {
  const clock = runClock({ ...small, start: SEVEN });
  expect(clock.crewHours).toBeCloseTo(10 + 1 / 3, 12);
  expect(clock.finish).toBeCloseTo(46352 + (9 * 60 + 35) / 1440, 9);
});

test("without a start there are hours and no finish", () => {
  expect(runClock(small)).toMatchObject({
    breaks: 0,
    elapsed: 31 / 12,
    finish: undefined,
    overtime: undefined,
  });
});

test("a break after every hour of work is taken twice in 2 h 35 min, and is no work", () => {
  const clock = runClock({
    ...small,
    start: SEVEN,
    rest: { after: hours(1), length: hours(0.25) },
  });
  expect(clock.breaks).toBe(2);
  expect(clock.crewHours).toBeCloseTo(10 + 1 / 3, 12);
  // 9:35 and two quarters of an hour.
  expect(clock.finish).toBeCloseTo(46352 + (10 * 60 + 5) / 1440, 9);
});

test("nobody takes a break when the work is done with it", () => {
  const rest = { after: hours(2), length: hours(0.5) };
  expect(runClock({ ...small, hours: hours(2), rest }).breaks).toBe(0);
  expect(runClock({ ...small, hours: hours(4), rest }).breaks).toBe(1);
  expect(runClock({ ...small, hours: hours(4.1), rest }).breaks).toBe(2);
});

test("two hours beyond a day of eight are ten crew-hours of overtime for five people", () => {
  const long = { hours: hours(10), people: 5 };
  expect(runClock({ ...long, dayLength: hours(8) }).overtime).toBe(10);
  expect(runClock({ ...long, dayLength: hours(10) }).overtime).toBe(0);
});

test("a late start is over on the next day", () => {
  const clock = runClock({ ...small, start: 46352 + 23 / 24 });
  expect(clock.finish).toBeCloseTo(46353 + 95 / 1440, 9);
});

test("the finish is a whole minute, never before the work is done and less than a minute after it", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 40, noNaN: true }),
      fc.integer({ min: 0, max: 1439 }),
      (work, minute) => {
        const start = 46352 + minute / 1440;
        const { finish = Number.NaN, elapsed } = runClock({
          hours: hours(work),
          people: 3,
          start,
          rest: { after: hours(2), length: hours(1 / 3) },
        });
        const over = (finish - start) * 1440 - elapsed * 60;
        expect(over).toBeGreaterThan(-1e-4);
        expect(over).toBeLessThan(1);
        expect(
          Math.abs(finish * 1440 - Math.round(finish * 1440)),
        ).toBeLessThan(1e-4);
      },
    ),
  );
});
