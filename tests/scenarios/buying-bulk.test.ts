import { as, type Share } from "../../src/measures/quantity";
import { landedPrice, usablePrice } from "../../src/trade/costing/landed";
import {
  syrupCost,
  syrupPerBottle,
} from "../../src/trade/costing/syrup-per-bottle";
import { priceForMargin } from "../../src/trade/pricing/margin";
import {
  priceByVolume,
  priceByWeight,
} from "../../src/trade/pricing/per-gallon";
import {
  aGallon,
  aPound,
  inPounds,
  lb,
  lbPerGal,
  mL,
  money,
  perGal,
  perLb,
} from "./in-pounds";

describe("what is a price a pound in gallons, and a price a gallon in pounds, at 11.03 lb/gal?", () => {
  const house = lbPerGal(11.03);

  test("2.60 a pound is 28.68 a gallon", () => {
    // 2.60 × 11.03 = 28.678.
    expect(aGallon(priceByVolume(perLb(2.6), house))).toBeCloseTo(28.678, 9);
  });

  test("34.10 a gallon is 3.0916 a pound, not 3.10", () => {
    // 34.10 ÷ 11.03 = 3.09157.
    expect(aPound(priceByWeight(perGal(34.1), house))).toBeCloseTo(3.09157, 5);
  });

  test('with "11" the gallon is 7.8 ¢ too low, 78 on a thousand gallons', () => {
    // 2.60 × (11.03 − 11) = 0.078.
    const low =
      aGallon(priceByVolume(perLb(2.6), house)) -
      aGallon(priceByVolume(perLb(2.6), lbPerGal(11)));
    expect(low * 1000).toBeCloseTo(78, 6);
  });
});

describe("what did lot 25-01 cost me, delivered, and what does a pound of it cost that reaches the kettle?", () => {
  // 10,251 lb × 2.36 = 24,192.36. The drum deposit of 840 comes back and is no cost.
  const purchase = {
    net: lb(10_251),
    syrup: money(24_192.36),
    freight: money(165),
    tests: money(0),
  };
  const losses = {
    net: purchase.net,
    filterLoss: as<Share>(0.015),
    heel: lb(0.6 * 24),
  };

  test("2.3761 a pound landed, 26.22 a gallon over its 928.96 gallons", () => {
    const landed = landedPrice(purchase);
    expect(aPound(landed)).toBeCloseTo(2.3761, 4);
    const itsGallon = lbPerGal(10_251 / 928.96);
    expect(aGallon(priceByVolume(landed, itsGallon))).toBeCloseTo(26.22, 2);
  });

  test("2.4157 a usable pound after 1.5 % in the filter and 0.6 lb in each of 24 drums", () => {
    // 10,251 × 0.985 − 14.4 = 10,082.8 lb; 24,357.36 ÷ 10,082.8.
    expect(aPound(usablePrice(landedPrice(purchase), losses))).toBeCloseTo(
      2.4157,
      4,
    );
  });

  test("cold drums that keep 3 lb each add 1.4 ¢ a pound", () => {
    // 10,251 × 0.985 − 72 = 10,025.235 lb; 24,357.36 ÷ 10,025.235 = 2.42961; − 2.41573 = 0.0139.
    const cold = { ...losses, heel: lb(3 * 24) };
    const landed = landedPrice(purchase);
    expect(
      aPound(usablePrice(landed, cold)) - aPound(usablePrice(landed, losses)),
    ).toBeCloseTo(0.0139, 4);
  });
});

describe("bulk goes up 25 ¢ a pound: what does that do to a bottle and to a gallon jug?", () => {
  const house = lbPerGal(11.03);
  const rise = (millilitres: number, centsMore: number): number =>
    syrupCost(syrupPerBottle(mL(millilitres), house), perLb(centsMore / 100));

  test("18.4 ¢ a 252 mL bottle and 2.77 a gallon jug of 3,806 mL", () => {
    // 252 × 11.03 ÷ 3,785.41 = 0.73428 lb; 3,806 × 11.03 ÷ 3,785.41 = 11.0900 lb.
    expect(inPounds(syrupPerBottle(mL(252), house))).toBeCloseTo(0.7343, 4);
    expect(rise(252, 25)).toBeCloseTo(0.1836, 4);
    expect(rise(3806, 25)).toBeCloseTo(2.7725, 4);
  });

  test("to hold a margin of 42 % the bottle goes up 31.7 ¢", () => {
    // 0.18357 ÷ 0.58 = 0.3165.
    const price = (cost: number): number =>
      priceForMargin({
        cost: money(cost),
        margin: as<Share>(0.42),
        feeShare: as<Share>(0),
        fixedFee: money(0),
      });
    expect(price(4.66 + rise(252, 25)) - price(4.66)).toBeCloseTo(0.3165, 4);
  });

  test("40 ¢ instead of 25 ¢ is 29.4 ¢ a bottle", () => {
    // 0.73428 lb × 0.40 = 0.29371.
    expect(rise(252, 40)).toBeCloseTo(0.2937, 4);
  });
});
