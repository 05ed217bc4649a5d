import fc from "fast-check";
import {
  as,
  type DaySerial,
  type Money,
  type Share,
} from "../../../src/measures/quantity";
import { breakPrice } from "../../../src/trade/costing/breaks";
import type { Material } from "../../../src/trade/costing/material-cost";
import { type OnShelf, pullOf } from "../../../src/trade/costing/pull-list";

const labels: Material = {
  part: "LBL-PL-F",
  needed: 600,
  spoilage: as<Share>(0.03),
  carton: 250,
  minimumOrder: 250,
  bought: "for each run",
  freight: as<Money>(28),
  breaks: (
    [
      [250, 0.58],
      [500, 0.41],
      [1000, 0.29],
      [2500, 0.2],
    ] as const
  ).map(([from, price]) => ({ from, price: as<Money>(price) })),
};
const none: OnShelf = { onHand: 0, due: 0, leadDays: 9 };
const runDay = as<DaySerial>(46352);

test("600 bottles need 619 labels; buying up to 1,000 costs 290 where 750 would cost 307.50", () => {
  // The job's custom quote: 600 ÷ 0.97 = 618.6; 1,000 × 0.29 = 290 against 750 × 0.41 = 307.50.
  const pull = pullOf(labels, none, runDay);
  expect(pull).toMatchObject({ pieces: 619, need: 750, short: 750 });
  expect(pull.order).toMatchObject({
    buy: 1000,
    least: 750,
    cost: 290,
    leftOver: 381,
    singly: false,
  });
  expect(pull.order?.saving).toBeCloseTo(17.5, 9);
  expect(pull.orderBy).toBe(46352 - 9);
});

test("1,200 bottles need 1,250 labels, at 362.50, and buying up would not pay", () => {
  const pull = pullOf({ ...labels, needed: 1200 }, none);
  expect(pull.order).toMatchObject({ buy: 1250, cost: 362.5, saving: 0 });
  expect(pull.orderBy).toBeUndefined();
});

test("what is on hand or on its way is not ordered again", () => {
  expect(pullOf(labels, { ...none, onHand: 619 }).order).toBeUndefined();
  expect(pullOf(labels, { ...none, onHand: 619 }).short).toBe(0);
  expect(pullOf(labels, { ...none, due: 700 }).short).toBe(0);
  // 750 less 500 there: one roll of 250 at 0.58, or 500 at 0.41, which is dearer.
  const pull = pullOf(labels, { ...none, onHand: 300, due: 200 });
  expect(pull.short).toBe(250);
  expect(pull.order).toMatchObject({ buy: 250, cost: 145, leftOver: 131 });
});

test("a part from stock is pulled by the piece", () => {
  const caps = {
    ...labels,
    bought: "from stock",
    spoilage: as<Share>(0.008),
  } as const;
  // 600 ÷ 0.992 = 604.84.
  expect(pullOf(caps, none)).toMatchObject({ pieces: 605, need: 605 });
});

test("nobody is told to order what was never counted, and an order without a price has no cost", () => {
  const unknown = pullOf(labels, { ...none, onHand: undefined }, runDay);
  expect([unknown.short, unknown.order, unknown.orderBy]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  const unpriced = pullOf({ ...labels, breaks: [] }, none, runDay);
  expect(unpriced.order).toMatchObject({ buy: 750, cost: undefined });
});

test("an order covers what is short in whole cartons, at or above the minimum, and never costs more than the least that would do", () => {
  fc.assert(
    fc.property(
      fc.record({
        needed: fc.integer({ min: 1, max: 20_000 }),
        spoilage: fc.double({ min: 0, max: 0.4, noNaN: true }),
        carton: fc.integer({ min: 1, max: 300 }),
        minimumOrder: fc.integer({ min: 1, max: 3000 }),
        onHand: fc.integer({ min: 0, max: 12_000 }),
        forRun: fc.boolean(),
      }),
      fc.uniqueArray(
        fc.record({
          from: fc.integer({ min: 1, max: 30_000 }),
          price: fc.integer({ min: 1, max: 300 }),
        }),
        { minLength: 1, maxLength: 6, selector: ({ from }) => from },
      ),
      ({ needed, spoilage, carton, minimumOrder, onHand, forRun }, prices) => {
        const breaks = prices.map(({ from, price }) => ({
          from,
          price: as<Money>(price / 100),
        }));
        const pull = pullOf(
          {
            ...labels,
            needed,
            spoilage: as<Share>(spoilage),
            carton,
            minimumOrder,
            bought: forRun ? "for each run" : "from stock",
            breaks,
          },
          { ...none, onHand },
        );
        const { order } = pull;
        expect(order === undefined).toBe(onHand >= pull.pieces);
        if (!order) return;
        expect(order.buy % carton).toBe(0);
        expect(order.buy).toBeGreaterThanOrEqual(minimumOrder);
        expect(onHand + order.buy).toBeGreaterThanOrEqual(pull.pieces);
        expect(order.leftOver).toBe(onHand + order.buy - pull.pieces);
        const least = order.least * breakPrice(order.least, breaks);
        expect(order.cost).toBeLessThanOrEqual(least + 1e-9);
        expect(order.saving).toBeCloseTo(least - (order.cost ?? 0), 6);
      },
    ),
  );
});
