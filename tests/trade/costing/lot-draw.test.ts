import fc from "fast-check";
import {
  as,
  type DaySerial,
  type Kilograms,
} from "../../../src/measures/quantity";
import { drawOldestFirst } from "../../../src/trade/costing/lot-draw";

const kg = (value: number): Kilograms => as<Kilograms>(value);
const lot = (name: string, received: number, left: number) => ({
  lot: name,
  received: as<DaySerial>(received),
  left: kg(left),
});

test("the oldest lot goes first, whatever its row; lots of one day go in the order of their rows", () => {
  const { draws, short } = drawOldestFirst(kg(120), [
    lot("C", 30, 100),
    lot("A", 10, 40),
    lot("B", 20, 50),
    lot("B2", 20, 50),
  ]);
  expect(draws).toEqual([
    { lot: "A", weight: 40, after: 0 },
    { lot: "B", weight: 50, after: 0 },
    { lot: "B2", weight: 30, after: 20 },
  ]);
  expect(short).toBe(0);
});

test("what the lots cannot give is short, and nothing is drawn from an empty or overdrawn lot", () => {
  const { draws, short } = drawOldestFirst(kg(100), [
    lot("A", 1, -5),
    lot("B", 2, 0),
    lot("C", 3, 60),
  ]);
  expect(draws.map(({ lot: name }) => name)).toEqual(["C"]);
  expect(short).toBe(40);
});

test("lots drawn and the shortage sum to the need, and no lot gives more than it holds", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 5000, noNaN: true }),
      fc.array(
        fc.record({
          received: fc.integer({ min: 1, max: 9 }),
          left: fc.double({ min: -50, max: 900, noNaN: true }),
        }),
        { maxLength: 30 },
      ),
      (need, given) => {
        const lots = given.map(({ received, left }, i) =>
          lot(String(i), received, left),
        );
        const { draws, short } = drawOldestFirst(kg(need), lots);
        const drawn = draws.reduce((sum, { weight }) => sum + weight, 0);
        expect(Math.abs(drawn + short - need)).toBeLessThan(1e-9 * (need + 1));
        for (const { lot: name, weight, after } of draws) {
          const left = lots[Number(name)]?.left ?? 0;
          expect(weight).toBeLessThanOrEqual(left);
          expect(after).toBeCloseTo(left - weight, 9);
        }
        // Only the last lot drawn from may have something left.
        for (const { after } of draws.slice(0, -1)) expect(after).toBe(0);
        if (short > 0)
          expect(draws.every(({ after }) => after === 0)).toBe(true);
      },
    ),
  );
});
