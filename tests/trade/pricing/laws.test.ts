import fc from "fast-check";
import {
  as,
  type KgPerLitre,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../../../src/measures/quantity";
import { breakEvenUnits } from "../../../src/trade/pricing/break-even";
import {
  margin,
  markup,
  priceForMargin,
} from "../../../src/trade/pricing/margin";
import {
  type Order,
  orderProfit,
} from "../../../src/trade/pricing/order-profit";
import {
  priceByVolume,
  priceByWeight,
} from "../../../src/trade/pricing/per-gallon";
import { roundPrice } from "../../../src/trade/pricing/round-price";
import { fromShelf, netOf, shelfPrice } from "../../../src/trade/pricing/shelf";
import { near } from "../quantities";

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
const money = (min: number, max: number): fc.Arbitrary<Money> =>
  between(min, max).map((v) => as<Money>(v));
const share = (max: number): fc.Arbitrary<Share> =>
  between(0, max).map((v) => as<Share>(v));
const wholeCents = (max: number): fc.Arbitrary<Money> =>
  fc.integer({ min: 0, max: max * 100 }).map((c) => as<Money>(c / 100));

describe("margin", () => {
  test("a price made for a margin has that margin", () => {
    fc.assert(
      fc.property(money(0.1, 500), share(0.95), (cost, wanted) => {
        const price = priceForMargin({
          cost,
          margin: wanted,
          feeShare: as<Share>(0),
          fixedFee: as<Money>(0),
        });
        return Math.abs(margin(price, cost) - wanted) < 1e-9;
      }),
    );
  });

  test("after fees and cost, the margin is what remains of the price", () => {
    fc.assert(
      fc.property(
        money(0.1, 500),
        share(0.5),
        share(0.4),
        money(0, 3),
        (cost, wanted, feeShare, fixedFee) => {
          const price = priceForMargin({
            cost,
            margin: wanted,
            feeShare,
            fixedFee,
          });
          const kept = price - cost - fixedFee - price * feeShare;
          return Math.abs(kept - price * wanted) < price * 1e-9;
        },
      ),
    );
  });

  test("margin on the price and markup on the cost are the same profit", () => {
    fc.assert(
      fc.property(
        money(0.1, 500),
        money(0.1, 500),
        (price, cost) =>
          Math.abs(margin(price, cost) * price - markup(price, cost) * cost) <
          1e-9,
      ),
    );
  });

  test("shares that take the whole price leave no price that works", () => {
    const ask = (kept: number, fees: number): number =>
      priceForMargin({
        cost: as<Money>(4.85),
        margin: as<Share>(kept),
        feeShare: as<Share>(fees),
        fixedFee: as<Money>(0),
      });
    expect(() => ask(0.86, 0.145)).toThrow(
      "no price works: margin and fees take 100.5 % of it",
    );
    // 1 − 0.9 − 0.1 is not 0 in binary; it must still be refused.
    expect(() => ask(0.9, 0.1)).toThrow(/^no price works/);
  });
});

describe("price endings", () => {
  test("up, down and nearest end as asked, on the right side and within one step", () => {
    fc.assert(
      fc.property(
        wholeCents(200),
        fc.constantFrom(0, 0.49, 0.9, 0.95, 0.99),
        (price, ending) => {
          fc.pre(price >= ending);
          const at = (way: "up" | "down" | "nearest"): number =>
            roundPrice(price, as<Money>(ending), way);
          for (const way of ["up", "down", "nearest"] as const) {
            const cents = Math.round(at(way) * 100);
            expect(cents % 100).toBe(Math.round(ending * 100));
          }
          expect(at("up")).toBeGreaterThanOrEqual(price);
          expect(at("up") - price).toBeLessThan(1);
          expect(at("down")).toBeLessThanOrEqual(price);
          expect(price - at("down")).toBeLessThan(1);
          expect(Math.abs(at("nearest") - price)).toBeLessThanOrEqual(
            0.5 + 1e-9,
          );
        },
      ),
    );
  });

  test("a price that has the ending stays, at every dollar up to a thousand", () => {
    for (let dollars = 0; dollars <= 1000; dollars += 1)
      for (const way of ["up", "down", "nearest"] as const)
        expect(
          roundPrice(as<Money>(dollars + 0.99), as<Money>(0.99), way),
        ).toBe(Number(`${dollars}.99`));
  });

  test("half way goes up; below the first ending there is nothing down", () => {
    const at = as<Money>(0.99);
    expect(roundPrice(as<Money>(7.49), at, "nearest")).toBe(7.99);
    expect(roundPrice(as<Money>(0.2), at, "nearest")).toBe(0.99);
    expect(() => roundPrice(as<Money>(0.5), at, "down")).toThrow(
      "no price ending in 0.99 is at or below 0.5",
    );
  });
});

describe("channels", () => {
  const none = { broker: as<Share>(0), promotion: as<Share>(0) };

  test("from our price to the shelf and back is our price", () => {
    fc.assert(
      fc.property(
        money(0.5, 100),
        share(0.6),
        share(0.6),
        (ours, shop, distributor) => {
          const chain = { shop, distributor };
          const { invoice } = fromShelf(shelfPrice(ours, chain), chain, none);
          return near(invoice, ours);
        },
      ),
    );
  });

  test("chained margins take less than their sum", () => {
    fc.assert(
      fc.property(share(0.45), share(0.45), (shop, distributor) => {
        const net = netOf(
          fromShelf(as<Money>(100), { shop, distributor }, none),
        );
        return net >= 100 * (1 - shop - distributor) - 1e-9;
      }),
    );
  });

  test("a second bottle in the box earns its margin and no second shipping", () => {
    fc.assert(
      fc.property(
        money(5, 50),
        money(1, 30),
        share(0.1),
        share(0.1),
        share(0.1),
        (price, cost, fee, goods, tax) => {
          const order: Order = {
            units: 1,
            price,
            cost,
            shippingPaidByBuyer: as<Money>(8),
            shippingCost: as<Money>(11.4),
            packing: as<Money>(1.2),
            orderFeeShare: fee,
            orderFee: as<Money>(0.3),
            goodsShare: goods,
            taxShare: tax,
          };
          const more =
            orderProfit({ ...order, units: 2 }).profit -
            orderProfit(order).profit;
          const each = price * (1 - fee * (1 + tax) - goods) - cost;
          return Math.abs(more - each) < 1e-9;
        },
      ),
    );
  });
});

describe("units and money spent once", () => {
  test("the break-even units pay it back and one fewer does not", () => {
    fc.assert(
      fc.property(
        wholeCents(5000),
        wholeCents(20),
        wholeCents(20),
        (once, price, cost) => {
          fc.pre(price - cost > 0.001 && once > 0);
          const units = breakEvenUnits(once, price, cost);
          const each = price - cost;
          expect(units * each).toBeGreaterThanOrEqual(once - each * 1e-6);
          expect((units - 1) * each).toBeLessThan(once);
        },
      ),
    );
    expect(() =>
      breakEvenUnits(as<Money>(100), as<Money>(5), as<Money>(5)),
    ).toThrow(/^never: /);
  });

  test("a price by the pound and by the gallon turn into each other", () => {
    fc.assert(
      fc.property(between(0.1, 20), between(1, 1.45), (price, d) => {
        const density = as<KgPerLitre>(d);
        const back = priceByWeight(
          priceByVolume(as<MoneyPerKg>(price), density),
          density,
        );
        return near(back, price);
      }),
    );
  });
});
