import fc from "fast-check";
import { as, type Money, type Share } from "../../../src/measures/quantity";
import {
  type Channel,
  channelPrice,
} from "../../../src/trade/pricing/channel-price";

const marketplace: Channel = {
  name: "Craft marketplace",
  goal: as<Share>(0.52),
  // Fees 9.5 %, marketing 4 %, returns 1 %; 0.45 an order of two bottles.
  shares: as<Share>(0.145),
  fixedPerBottle: as<Money>(0.225),
  price: as<Money>(15.99),
};
const ending = as<Money>(0.99);

describe("the worked example of a craft marketplace, at a cost of 4.85", () => {
  const at = (over: Partial<Channel> = {}, full = 4.85) =>
    channelPrice(
      { ...marketplace, ...over },
      as<Money>(full),
      as<Money>(3.5),
      ending,
    );

  test("its goal asks for 15.15, so for 15.99, which keeps 53.8 %", () => {
    const priced = at();
    expect(priced.goalPrice).toBe(15.99);
    // 1 − 0.145 − 5.075 ÷ 15.99 = 53.76 %.
    expect(priced.kept).toBeCloseTo(0.5376, 4);
    expect(priced.underGoal).toBe(false);
    expect(priced.margin).toBeCloseTo(0.6967, 4); // (15.99 − 4.85) ÷ 15.99
    expect(priced.markup).toBeCloseTo(2.2969, 4); // (15.99 − 4.85) ÷ 4.85
    expect(priced.directMargin).toBeCloseTo(0.7811, 4); // (15.99 − 3.50) ÷ 15.99
  });

  test("at 14.99 it keeps 51.6 % and is under its goal", () => {
    const priced = at({ price: as<Money>(14.99) });
    expect(priced.kept).toBeCloseTo(0.5164, 4); // 0.855 − 5.075 ÷ 14.99
    expect(priced.underGoal).toBe(true);
  });

  test("a price that meets its goal to the last digit is not under it", () => {
    expect(at({ price: as<Money>(5.075 / 0.335) }).underGoal).toBe(false);
  });

  test("a goal of 86 % has no price that works", () => {
    const priced = at({ goal: as<Share>(0.86) });
    expect(priced.goalPrice).toBeUndefined();
    expect(priced.underGoal).toBe(true);
  });

  test("no price, or no cost, and nothing is said of margins", () => {
    expect(at({ price: undefined })).toMatchObject({
      margin: undefined,
      markup: undefined,
      kept: undefined,
      directMargin: undefined,
      goalPrice: 15.99,
      underGoal: false,
    });
    expect(channelPrice(marketplace, undefined, undefined, ending)).toEqual({
      channel: "Craft marketplace",
      price: 15.99,
      goal: 0.52,
      margin: undefined,
      markup: undefined,
      kept: undefined,
      directMargin: undefined,
      goalPrice: undefined,
      underGoal: false,
    });
  });
});

test("charged its goal price, a channel is never under its goal", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 50, max: 5000 }),
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 0, max: 35 }),
      fc.integer({ min: 0, max: 200 }),
      (cost, goal, shares, fixed) => {
        const channel: Channel = {
          name: "any",
          goal: as<Share>(goal / 100),
          shares: as<Share>(shares / 100),
          fixedPerBottle: as<Money>(fixed / 100),
          price: undefined,
        };
        const full = as<Money>(cost / 100);
        const { goalPrice } = channelPrice(channel, full, full, ending);
        if (goalPrice === undefined) throw new Error("there is a price");
        const price = (p: number) =>
          channelPrice({ ...channel, price: as<Money>(p) }, full, full, ending);
        expect(price(goalPrice).underGoal).toBe(false);
        // And a dollar less would be, as the next lower price with that ending.
        if (goalPrice > 1.5) expect(price(goalPrice - 1).underGoal).toBe(true);
      },
    ),
  );
});
