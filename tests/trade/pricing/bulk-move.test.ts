import fc from "fast-check";
import { as, type Money, type Share } from "../../../src/measures/quantity";
import { heldPrices } from "../../../src/trade/pricing/bulk-move";

const money = (value: number): Money => as<Money>(value);
const share = (value: number): Share => as<Share>(value);

const standing = fc
  .record({
    cost: fc.double({ min: 0.5, max: 50, noNaN: true }),
    margin: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    shares: fc.double({ min: 0, max: 0.4, noNaN: true }),
    fixed: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ cost, margin, shares, fixed }) => ({
    cost: money(cost),
    price: money((cost + fixed) / (1 - margin - shares)),
    shares: share(shares),
    fixedPerBottle: money(fixed),
  }));

const move = fc.double({ min: 0, max: 5, noNaN: true });

test("the price that holds the money leaves the same money a bottle", () => {
  fc.assert(
    fc.property(standing, move, (now, by) => {
      const left = (price: number, cost: number): number =>
        price * (1 - now.shares) - cost - now.fixedPerBottle;
      const { inMoney } = heldPrices(now, money(by));
      expect(left(inMoney, now.cost + by)).toBeCloseTo(
        left(now.price, now.cost),
        8,
      );
    }),
  );
});

test("the price that holds the percent leaves the same share of it, and is the dearer one when cost rises", () => {
  fc.assert(
    fc.property(standing, move, (now, by) => {
      const left = (price: number, cost: number): number =>
        1 - now.shares - (cost + now.fixedPerBottle) / price;
      const { inMoney, inPercent } = heldPrices(now, money(by));
      expect(left(inPercent, now.cost + by)).toBeCloseTo(
        left(now.price, now.cost),
        9,
      );
      expect(inPercent).toBeGreaterThanOrEqual(inMoney - 1e-9);
    }),
  );
});

test("a cost that stays leaves the price where it is", () => {
  fc.assert(
    fc.property(standing, (now) => {
      const { inMoney, inPercent } = heldPrices(now, money(0));
      expect(inMoney).toBeCloseTo(now.price, 8);
      expect(inPercent).toBeCloseTo(now.price, 8);
    }),
  );
});

test("a bottle sold below cost has nothing to hold", () => {
  expect(() =>
    heldPrices(
      {
        cost: money(5),
        price: money(4),
        shares: share(0),
        fixedPerBottle: money(0),
      },
      money(0.2),
    ),
  ).toThrow("sold below cost");
});
