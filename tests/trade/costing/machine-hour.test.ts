import {
  as,
  type Hours,
  type Kilograms,
  type Money,
  type MoneyPerHour,
  type MoneyPerKg,
  type Seconds,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import { changeOverCost } from "../../../src/trade/costing/change-over";
import { machineHourRate } from "../../../src/trade/costing/machine-hour";

const machine = (over: Partial<Parameters<typeof machineHourRate>[0]> = {}) =>
  machineHourRate({
    price: as<Money>(16_800),
    resale: as<Money>(0),
    years: 8,
    upkeepPerYear: as<Money>(0),
    hoursPerYear: as<Hours>(34.4),
    ...over,
  });

describe("an hour of two fillers bought for 16,800 and used for eight years", () => {
  test("34.4 hours a year make it 61.05", () => {
    expect(machine()).toBeCloseTo(61.0465, 4); // 16,800 ÷ 8 = 2,100; ÷ 34.4
  });

  test("400 of upkeep and 800 of resale make it 69.77", () => {
    // (16,800 − 800) ÷ 8 = 2,000; + 400 = 2,400; ÷ 34.4.
    expect(
      machine({ resale: as<Money>(800), upkeepPerYear: as<Money>(400) }),
    ).toBeCloseTo(69.7674, 4);
  });

  test("twice the hours halve it", () => {
    expect(machine({ hoursPerYear: as<Hours>(68.8) })).toBeCloseTo(30.5233, 4);
  });

  test("no hours, no years and a resale above the price are refused by name", () => {
    expect(() => machine({ hoursPerYear: as<Hours>(0) })).toThrow(/^hours: /);
    expect(() => machine({ years: 0 })).toThrow(/^years: /);
    expect(() => machine({ resale: as<Money>(20_000) })).toThrow(/^resale: /);
  });
});

test("a change of the small pair: 55 minutes of 96.76, 11 lb at 2.60 and 144.44 of chemicals are 261.74", () => {
  const cost = changeOverCost({
    crew: as<MoneyPerHour>(96.76),
    setup: as<Seconds>(25 * 60),
    clean: as<Seconds>(30 * 60),
    purge: as<Kilograms>(11 * KG_PER_LB),
    syrup: as<MoneyPerKg>(2.6 / KG_PER_LB),
    cleaning: as<Money>(2600 / 18),
  });
  expect(cost.crew).toBeCloseTo(88.6967, 4); // 96.76 × 55 ÷ 60
  expect(cost.syrup).toBeCloseTo(28.6, 9); // 11 × 2.60
  expect(cost.total).toBeCloseTo(261.7411, 4);
  // Over 300 bottles that is 87.2 ¢, over 6,000 it is 4.4 ¢.
  expect(cost.total / 300).toBeCloseTo(0.8725, 4);
});
