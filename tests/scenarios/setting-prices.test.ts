import { as, type Share } from "../../src/measures/quantity";
import { margin, markup, priceForMargin } from "../../src/trade/pricing/margin";
import { roundPrice } from "../../src/trade/pricing/round-price";
import { fromShelf, netOf } from "../../src/trade/pricing/shelf";
import { money } from "./in-pounds";

const share = (value: number): Share => as<Share>(value);

describe("margin is not markup: a bottle costs 5.20", () => {
  const cost = money(5.2);
  const priceAt = (wanted: number): number =>
    priceForMargin({
      cost,
      margin: share(wanted),
      feeShare: share(0),
      fixedFee: money(0),
    });

  test("a margin of 35 % is 8.00, which is a markup of 53.8 %", () => {
    expect(priceAt(0.35)).toBeCloseTo(8, 9);
    expect(markup(money(8), cost)).toBeCloseTo(0.538, 3);
  });

  test("a markup of 35 % is 7.02, which leaves a margin of 25.9 %", () => {
    expect(markup(money(7.02), cost)).toBeCloseTo(0.35, 9);
    expect(margin(money(7.02), cost)).toBeCloseTo(0.259, 3);
  });

  test("a margin of 40 % is 8.67", () => {
    // 5.20 ÷ 0.60 = 8.6667.
    expect(priceAt(0.4)).toBeCloseTo(8.6667, 4);
  });
});

describe("back from a shelf price of 13.49: what do I keep?", () => {
  const chain = { shop: share(0.38), distributor: share(0.25) };
  const mine = { broker: share(0.05), promotion: share(0.04) };

  test("6.2729 invoice, less 0.3136 broker and 0.2509 promotion, is 5.7083", () => {
    // 13.49 × 0.62 = 8.3638; × 0.75 = 6.27285.
    const taken = fromShelf(money(13.49), chain, mine);
    expect(taken.invoice).toBeCloseTo(6.27285, 9);
    expect(taken.broker).toBeCloseTo(0.3136, 4);
    expect(taken.promotion).toBeCloseTo(0.2509, 4);
    expect(netOf(taken)).toBeCloseTo(5.7083, 4);
  });

  test("at a cost of 4.85 that earns 0.8583, 13.7 % of the invoice", () => {
    const taken = fromShelf(money(13.49), chain, mine);
    const earned = netOf(taken) - 4.85;
    expect(earned).toBeCloseTo(0.8583, 4);
    expect(earned / taken.invoice).toBeCloseTo(0.137, 3);
  });

  test("a dollar more on the shelf leaves 42.3 ¢", () => {
    // 1.00 × 0.62 × 0.75 × 0.91 = 0.42315.
    const more = netOf(fromShelf(money(14.49), chain, mine));
    const now = netOf(fromShelf(money(13.49), chain, mine));
    expect(more - now).toBeCloseTo(0.42315, 9);
  });
});

describe("what price keeps 52 % on a craft marketplace?", () => {
  const ask = (wanted: number, fixed = 0.45): number =>
    priceForMargin({
      cost: money(4.85),
      margin: share(wanted),
      // Fees 9.5 %, marketing 4 %, returns 1 %.
      feeShare: share(0.145),
      // A fixed fee an order, shared by the two bottles in it.
      fixedFee: money(fixed / 2),
    });

  test("15.15, or 15.99 with its ending", () => {
    // (4.85 + 0.225) ÷ (1 − 0.52 − 0.145) = 5.075 ÷ 0.335 = 15.149.
    expect(ask(0.52)).toBeCloseTo(15.149, 3);
    expect(roundPrice(money(ask(0.52)), money(0.99), "up")).toBe(15.99);
  });

  test("with a margin of 86 % the shares come to 100.5 %: no price works", () => {
    expect(() => ask(0.86)).toThrow(
      "no price works: margin and fees take 100.5 % of it",
    );
  });

  test("a fixed fee of 0.65 an order makes it 15.45", () => {
    // 0.10 more a bottle ÷ 0.335 = 0.2985; 15.1493 + 0.2985 = 15.4478.
    expect(ask(0.52, 0.65)).toBeCloseTo(15.4478, 4);
  });
});
