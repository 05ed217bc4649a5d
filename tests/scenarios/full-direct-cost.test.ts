import { as, type Money, type Share } from "../../src/measures/quantity";
import { costTotal } from "../../src/trade/costing/cost-total";
import { margin, priceForMargin } from "../../src/trade/pricing/margin";
import { amountOf, privateLabelRun } from "./private-label-run";

const priceAt32 = (cost: number): Money =>
  priceForMargin({
    cost: as<Money>(cost),
    margin: as<Share>(0.32),
    feeShare: as<Share>(0.005),
    fixedFee: as<Money>(0),
  });

describe("what does each of 1,200 private-label bottles cost me on the small pair, and what must I charge?", () => {
  const parts = privateLabelRun(1200, 2.6, 2);

  test.each([
    ["syrup", 2294.86, "252.2 mL at 11.04 lb/gal: 0.735531 lb × 2.60 × 1,200"],
    ["purge", 28.6, "11 lb × 2.60"],
    ["bottles", 1738.08, "1,200 ÷ 0.985 = 1,218.3, up to 1,224 × 1.42"],
    ["caps", 139.11, "1,209.68 × 0.115"],
    ["bands", 41.63, "1,224.49 × 0.034"],
    ["front labels", 362.5, "1,237.1, up to 1,250 × 0.29"],
    ["back labels", 300, "1,250 × 0.24"],
    ["cases", 163.64, "101.01 × 1.62"],
    ["case labels", 10.72, "206.19 × 0.052"],
    ["ink", 2.52, "1,200 × 0.0021"],
    ["pallets", 31.9, "2 × (12.75 + 3.20)"],
    ["inbound freight", 241, "185 + 28 + 28"],
    ["labour", 249.96, "96.76 × (55/60 + 1,200/720)"],
    [
      "propane",
      4.68,
      "(893.64 lb × 125 × 0.66 + 14,000 × 2.5833) ÷ 0.68 ÷ 91,500 × 2.65",
    ],
  ])("%s come to %d: %s", (name, amount) => {
    expect(Math.abs(amountOf(parts, name) - amount)).toBeLessThanOrEqual(
      0.0051,
    );
  });

  test("together 5,609.20, or 4.6743 a bottle and 56.09 a case", () => {
    const total = costTotal(parts);
    expect(total).toBeCloseTo(5609.2, 1);
    expect(total / 1200).toBeCloseTo(4.6743, 4);
    expect(total / 100).toBeCloseTo(56.09, 2);
  });

  test("for 32 % margin and 0.5 % returns I must charge 6.92; at 7.20 I keep 35.1 %", () => {
    const each = costTotal(parts) / 1200;
    // 4.6743 ÷ (1 − 0.325) = 6.9249.
    expect(priceAt32(each)).toBeCloseTo(6.92, 2);
    expect(margin(as<Money>(7.2), as<Money>(each))).toBeCloseTo(0.351, 3);
  });

  test("bulk 10 ¢ a pound dearer adds 89.36 to the run", () => {
    // (0.735531 × 1,200 + 11) lb × 0.10 = 882.637 × 0.10 + 1.10 = 89.364; 89.364 ÷ 1,200 = 7.45 ¢ a bottle.
    const dearer = costTotal(privateLabelRun(1200, 2.7, 2));
    expect(dearer - costTotal(parts)).toBeCloseTo(89.36, 2);
  });

  test("a part without its price withholds the total and is named", () => {
    const unpriced = parts.map((p) =>
      p.name === "caps" ? { ...p, amount: undefined } : p,
    );
    expect(() => costTotal(unpriced)).toThrow("needs caps");
  });
});

describe("what do I quote for 600 of the same private label?", () => {
  const parts = privateLabelRun(600, 2.6, 1);

  test.each([
    ["syrup", 1147.43, "0.735531 lb × 2.60 × 600"],
    ["bottles", 869.04, "600 ÷ 0.985 = 609.1, up to 612 × 1.42"],
    ["caps", 69.56, "604.84 × 0.115"],
    ["bands", 20.82, "612.24 × 0.034"],
    ["front labels", 290, "need 619: 1,000 × 0.29 beats 750 × 0.41 = 307.50"],
    ["back labels", 240, "need 619: 1,000 × 0.24 beats 750 × 0.33 = 247.50"],
    ["cases", 81.82, "50.51 × 1.62"],
    ["case labels", 5.36, "103.09 × 0.052"],
    ["ink", 1.26, "600 × 0.0021"],
    ["pallets", 15.95, "12.75 + 3.20"],
    ["labour", 169.33, "96.76 × 1.75 h"],
    ["propane", 2.63, "(452.32 lb × 82.5 + 14,000 × 1.75) ÷ 62,220 × 2.65"],
  ])("%s come to %d: %s", (name, amount) => {
    expect(Math.abs(amountOf(parts, name) - amount)).toBeLessThanOrEqual(
      0.0051,
    );
  });

  test("3,182.79, which is 5.3047 each and a quote of 7.86", () => {
    const total = costTotal(parts);
    expect(total).toBeCloseTo(3182.79, 1);
    expect(total / 600).toBeCloseTo(5.3047, 4);
    // 5.3047 ÷ 0.675 = 7.8588.
    expect(priceAt32(total / 600)).toBeCloseTo(7.86, 2);
  });

  test("at 480 bottles the labels stop being bought up", () => {
    // Need 480 ÷ 0.97 = 494.8: two rolls, 500 × 0.41 = 205 and 500 × 0.33 = 165, both below 1,000 at the next break.
    const fewer = privateLabelRun(480, 2.6, 1);
    expect(amountOf(fewer, "front labels")).toBeCloseTo(205, 9);
    expect(amountOf(fewer, "back labels")).toBeCloseTo(165, 9);
  });
});
