import * as fc from "fast-check";
import { as, type Money, type Share } from "../../../src/measures/quantity";
import { leftover } from "../../../src/trade/costing/leftovers";
import type { Channel } from "../../../src/trade/pricing/channel-price";
import {
  type LeftoverTerms,
  quoteTier,
  setUpPerBottle,
} from "../../../src/trade/pricing/quote";
import { breakEvenNew } from "../../../src/trade/pricing/break-even-new";
import { privateLabelFacts } from "../../scenarios/private-label-facts";

const money = (value: number): Money => as<Money>(value);
const label: Channel = {
  name: "Private label",
  goal: as<Share>(0.32),
  shares: as<Share>(0.005),
  fixedPerBottle: money(0),
  price: undefined,
};
const tier = (bottles: number, leftovers: LeftoverTerms) =>
  quoteTier(privateLabelFacts(bottles), {
    channel: label,
    goalOn: "direct",
    leftovers,
    spent: undefined,
  });
const each = (bottles: number, leftovers: LeftoverTerms): number => {
  const { direct } = tier(bottles, leftovers);
  if (direct === undefined) throw new Error("withheld");
  return direct;
};

describe("laws of a quote", () => {
  /**
   * At whole pallets (14 × 6 cases of 12) no case or pallet is part filled, so a larger run can only be dearer a bottle
   * by a piece that spoilage rounds up: at most one of each part, at its dearest price.
   */
  test("leftovers kept, a larger run on the same line is never dearer a bottle than one piece of each part", () => {
    const pallet = 14 * 6 * 12;
    const onePieceOfEach = privateLabelFacts(pallet).materials.reduce(
      (sum, { breaks }) => sum + Math.max(...breaks.map(({ price }) => price)),
      0,
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        (few, more) => {
          const small = few * pallet;
          const large = (few + more) * pallet;
          expect(each(large, "kept")).toBeLessThanOrEqual(
            each(small, "kept") + onePieceOfEach / large + 1e-9,
          );
        },
      ),
    );
  });

  test("leftovers charged, it can be dearer: one label more opens a roll of 250", () => {
    // 970 ÷ 0.97 = 1,000 labels: four rolls; 971 ÷ 0.97 = 1,001.03 labels: five. 250 × (0.29 + 0.24) = 132.50 a run more.
    expect(tier(970, "charged").cost.materials[3]?.pieces).toBe(1000);
    expect(tier(971, "charged").cost.materials[3]?.pieces).toBe(1250);
    expect(each(971, "charged")).toBeGreaterThan(each(970, "charged"));
    expect(each(971, "kept")).toBeLessThan(each(970, "kept"));
  });

  test("kept is charged less what is left over is worth, never more", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (bottles) => {
        const left = tier(bottles, "kept").leftovers;
        const worth = left.reduce((sum, { value }) => sum + value, 0);
        expect(left.every(({ pieces, value }) => pieces > 0 && value > 0)).toBe(
          true,
        );
        expect(each(bottles, "charged") - each(bottles, "kept")).toBeCloseTo(
          worth / bottles,
          9,
        );
      }),
    );
  });

  test("the price leaves the goal to within half a cent of price", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (bottles) => {
        const { price = 0, direct = 0 } = tier(bottles, "charged");
        expect(
          Math.abs(price * (1 - 0.005 - 0.32) - direct),
        ).toBeLessThanOrEqual(0.005 * 0.675 + 1e-9);
      }),
    );
  });
});

test("300 bottles: 305 are drawn of a least order of 504, at 1.42 each", () => {
  // 300 ÷ 0.985 = 304.57; 504 − 305 = 199 left, 199 × 1.42 = 282.58.
  const { belowMinimum, leftovers } = tier(300, "charged");
  expect(belowMinimum).toEqual([
    {
      part: "bottles",
      needed: 305,
      minimum: 504,
      priceEach: 1.42,
      ordered: 504,
      cost: expect.closeTo(715.68, 9) as number,
    },
  ]);
  expect(leftovers[0]).toEqual({
    part: "bottles",
    pieces: 199,
    value: expect.closeTo(282.58, 9) as number,
  });
});

test("a part from stock and one without a price leave nothing over", () => {
  const [bottles] = privateLabelFacts(300).materials;
  if (!bottles) throw new Error("no bottles");
  expect(leftover({ ...bottles, bought: "from stock" })).toBeUndefined();
  expect(leftover({ ...bottles, breaks: [] })).toBeUndefined();
});

test("a goal that takes the whole price leaves none", () => {
  const asked = quoteTier(privateLabelFacts(600), {
    channel: { ...label, goal: as<Share>(0.995) },
    goalOn: "full",
    leftovers: "charged",
    spent: undefined,
  });
  expect(asked.full).toBeDefined();
  expect(asked.price).toBeUndefined();
  expect(asked.contribution).toBeUndefined();
});

test("artwork for 240 is 40 ¢ a bottle of 600, and 4.8 ¢ of 5,000 it lasts for", () => {
  expect(setUpPerBottle(money(240), 600, undefined)).toBeCloseTo(0.4, 12);
  expect(setUpPerBottle(money(240), 600, 5000)).toBeCloseTo(0.048, 12);
});

describe("a new product earns its one-time money back", () => {
  const ask = (
    fixedPerYear: number,
    forecastPerYear: number | undefined,
    contribution = 2.5,
  ) =>
    breakEvenNew({
      oneTime: money(1500),
      fixedPerYear: money(fixedPerYear),
      contribution: money(contribution),
      forecastPerYear,
    });

  test("1,500 at 2.50 a bottle: 600 bottles, three months at 2,400 a year", () => {
    expect(ask(0, 2400)).toEqual({ units: 600, months: 3 });
    expect(ask(0, undefined)).toEqual({ units: 600, months: undefined });
  });

  test("1,200 a year of its own take 50 ¢ of each of 2,400: 750 bottles, 3.75 months", () => {
    // 1,200 ÷ 2,400 = 0.50; 1,500 ÷ 2.00 = 750; 1,500 ÷ (2,400 × 2.50 − 1,200) × 12 = 3.75.
    expect(ask(1200, 2400)).toEqual({ units: 750, months: 3.75 });
  });

  test("never, where a bottle or a year earns nothing", () => {
    expect(() => ask(0, 2400, 0)).toThrow("never: a unit does not earn");
    expect(() => ask(6000, 2400)).toThrow("never: a year at the forecast");
  });

  test("yearly costs without a forecast, and a forecast of nothing, are refused", () => {
    expect(() => ask(1200, undefined)).toThrow("needs forecast");
    expect(() => ask(0, 0)).toThrow("forecast: 0 must be above 0");
  });
});
