import {
  as,
  type Brix,
  type Celsius,
  type HotLitres,
  type Kilojoules,
  type Millimetres,
  type Share,
} from "../../src/measures/quantity";
import { whereReaches } from "../../src/measures/root";
import {
  KILOJOULES_PER_BTU,
  LITRES_PER_GALLON,
} from "../../src/measures/units";
import { fuelForHeat } from "../../src/trade/filling/fuel";
import {
  coldVolume,
  hotVolume,
  shrinkage,
} from "../../src/trade/filling/hot-volume";
import { levelDrop } from "../../src/trade/filling/level";
import { lbPerGal, mL } from "./in-pounds";

const brix = as<Brix>(66);

/** The temperature at which this syrup shrinks by the share that a scenario takes as given. */
const fillThatShrinks = (share: number): Celsius =>
  as<Celsius>(
    whereReaches((t) => shrinkage(brix, as<Celsius>(t)), share, 20, 100),
  );

describe("I want 252 mL cold; shrink is 2.7 % of the hot volume: what do I fill hot?", () => {
  const fill = fillThatShrinks(0.027);

  test("258.99 mL hot", () => {
    // 252 ÷ 0.973 = 258.993.
    expect(hotVolume(mL(252), brix, fill) * 1000).toBeCloseTo(258.993, 3);
  });

  test("the level drops 18.4 mm in a 22 mm neck", () => {
    // π × 1.1² = 3.8013 cm²; 6.993 mL ÷ 3.8013 = 1.840 cm.
    expect(levelDrop(mL(252), brix, fill, as<Millimetres>(22))).toBeCloseTo(
      18.4,
      1,
    );
  });

  test("at 3.0 % shrink it is 259.79 mL and 20.5 mm", () => {
    // 252 ÷ 0.970 = 259.794; 7.794 ÷ 3.8013 = 2.0503 cm.
    const hotter = fillThatShrinks(0.03);
    expect(hotVolume(mL(252), brix, hotter) * 1000).toBeCloseTo(259.794, 3);
    expect(levelDrop(mL(252), brix, hotter, as<Millimetres>(22))).toBeCloseTo(
      20.5,
      1,
    );
  });
});

describe("what does the propane for a kettle of 120 hot gallons cost?", () => {
  const propane = (btu: number, efficiency = 0.68): number =>
    fuelForHeat(
      as<Kilojoules>(btu * KILOJOULES_PER_BTU),
      "propane",
      as<Share>(efficiency),
    );
  const cold = coldVolume(
    as<HotLitres>(120 * LITRES_PER_GALLON),
    brix,
    fillThatShrinks(0.027),
  );
  const pounds = (cold * lbPerGal(11.03)) / lbPerGal(1) / LITRES_PER_GALLON;
  const heating = pounds * 125 * 0.66;
  const holding = 3 * 14_000;

  test("1,287.86 lb take 106,249 BTU: 4.53 of propane at 2.65", () => {
    // 120 × 0.973 × 11.03 = 1,287.86; × 125 °F × 0.66; ÷ 0.68 ÷ 91,500 = 1.7076 gal.
    expect(pounds).toBeCloseTo(1287.86, 2);
    expect(heating).toBeCloseTo(106_249, -1);
    expect(propane(heating)).toBeCloseTo(1.7076, 4);
    expect(propane(heating) * 2.65).toBeCloseTo(4.53, 2);
  });

  test("holding it for 3 h costs 1.79 more, 5.4 ¢ a gallon cold together", () => {
    // 42,000 ÷ 0.68 ÷ 91,500 × 2.65 = 1.7888; (4.525 + 1.789) ÷ 116.76 gal = 5.41 ¢.
    expect(propane(holding) * 2.65).toBeCloseTo(1.79, 2);
    const together = propane(heating + holding) * 2.65;
    expect(together / (cold / LITRES_PER_GALLON)).toBeCloseTo(0.0541, 4);
  });

  test("a burner of 50 % takes 36 % more", () => {
    // 0.68 ÷ 0.50 = 1.36; 1.7076 × 1.36 = 2.3223 gal.
    expect(propane(heating, 0.5)).toBeCloseTo(2.3223, 3);
  });
});
