import fc from "fast-check";
import { as, type Money, type Share } from "../../../src/measures/quantity";
import { orderProfit } from "../../../src/trade/pricing/order-profit";
import {
  firstOrderThatPays,
  orderEarned,
  type OrderTerms,
} from "../../../src/trade/pricing/web-order";

const terms = (
  over: Partial<Record<keyof OrderTerms, number | boolean>> = {},
) =>
  ({
    price: 13.49,
    cost: 4.85,
    feeShare: 0.029,
    feePerOrder: 0.3,
    feeOnShipping: true,
    feeOnTax: true,
    salesTax: 0,
    goodsShare: 0.1,
    shippingCharged: 6.95,
    shippingFirst: 11.8,
    shippingEachFurther: 0,
    mailer: 0,
    ...over,
  }) as unknown as OrderTerms;

describe("a web order of 13.49 a bottle, worked by hand", () => {
  test("one bottle leaves 1.55, four leave 22.27", () => {
    // 13.49 + 6.95 − 4.85 − (20.44 × 2.9 % + 0.30) − 1.349 − 11.80 = 1.5482.
    expect(orderEarned(terms(), 1).left).toBeCloseTo(1.54824, 5);
    // 53.96 + 6.95 − 19.40 − (60.91 × 2.9 % + 0.30) − 5.396 − 11.80 = 22.2476.
    expect(orderEarned(terms(), 4).left).toBeCloseTo(22.24761, 5);
  });

  test("with shipping free to the buyer one loses 5.20 and two pay", () => {
    const free = terms({ shippingCharged: 0 });
    // 1.54824 − 6.95 × 0.971 = −5.20021.
    expect(orderEarned(free, 1).left).toBeCloseTo(-5.20021, 5);
    expect(firstOrderThatPays(free)).toBe(2);
  });

  test("a mailer of 2.00 makes one bottle lose 45 ¢", () => {
    expect(orderEarned(terms({ mailer: 2 }), 1).left).toBeCloseTo(-0.45176, 5);
    expect(firstOrderThatPays(terms({ mailer: 2 }))).toBe(2);
  });

  test("a fee on the goods only takes 20 ¢ less", () => {
    // 6.95 × 2.9 % = 0.20155.
    const onGoods = orderEarned(terms({ feeOnShipping: false }), 1);
    expect(onGoods.left - orderEarned(terms(), 1).left).toBeCloseTo(0.20155, 9);
  });

  test("a bottle sold below its cost never pays", () => {
    expect(firstOrderThatPays(terms({ cost: 14 }))).toBeUndefined();
  });
});

const anyTerms = fc
  .record({
    price: fc.double({ min: 1, max: 100, noNaN: true }),
    cost: fc.double({ min: 0.1, max: 100, noNaN: true }),
    feeShare: fc.double({ min: 0, max: 0.2, noNaN: true }),
    feePerOrder: fc.double({ min: 0, max: 2, noNaN: true }),
    feeOnShipping: fc.boolean(),
    feeOnTax: fc.boolean(),
    salesTax: fc.double({ min: 0, max: 0.1, noNaN: true }),
    goodsShare: fc.double({ min: 0, max: 0.3, noNaN: true }),
    shippingCharged: fc.double({ min: 0, max: 20, noNaN: true }),
    shippingFirst: fc.double({ min: 0, max: 30, noNaN: true }),
    shippingEachFurther: fc.double({ min: 0, max: 5, noNaN: true }),
    mailer: fc.double({ min: 0, max: 5, noNaN: true }),
  })
  .map((parts) => terms(parts));

test("each further bottle changes an order by the same money, so an order's profit goes one way only", () => {
  fc.assert(
    fc.property(anyTerms, fc.integer({ min: 1, max: 200 }), (one, n) => {
      const at = (bottles: number): number => orderEarned(one, bottles).left;
      expect(at(n + 1) - at(n)).toBeCloseTo(at(2) - at(1), 6);
    }),
  );
});

test("the first order that pays does pay, and one bottle fewer does not", () => {
  fc.assert(
    fc.property(anyTerms, (one) => {
      const first = firstOrderThatPays(one);
      if (first === undefined) {
        expect(orderEarned(one, 1).left).toBeLessThan(0);
        return;
      }
      const slack = 0.0001 + 1e-5 * first;
      expect(orderEarned(one, first).left).toBeGreaterThanOrEqual(-slack);
      if (first > 1)
        expect(orderEarned(one, first - 1).left).toBeLessThan(slack);
    }),
  );
});

test("where the fee is on everything, an order earns what the worksheet function says", () => {
  fc.assert(
    fc.property(anyTerms, fc.integer({ min: 1, max: 48 }), (any, units) => {
      const one: OrderTerms = {
        ...any,
        feeOnShipping: true,
        feeOnTax: true,
        shippingEachFurther: as<Money>(0),
      };
      const { profit } = orderProfit({
        units,
        price: one.price,
        cost: one.cost,
        shippingPaidByBuyer: one.shippingCharged,
        shippingCost: one.shippingFirst,
        packing: one.mailer,
        orderFeeShare: one.feeShare,
        orderFee: one.feePerOrder,
        goodsShare: one.goodsShare,
        taxShare: as<Share>(one.salesTax),
      });
      expect(orderEarned(one, units).left).toBeCloseTo(profit, 6);
    }),
  );
});
