import fc from "fast-check";
import {
  as,
  type Brix,
  type Celsius,
  type ColdLitres,
  type HotLitres,
  type Kilograms,
  type Share,
} from "../../../src/measures/quantity";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../../src/measures/units";
import { kettleFills } from "../../../src/trade/costing/kettle-fills";
import { shrinkage } from "../../../src/trade/filling/hot-volume";
import type { Kettle } from "../../../src/trade/filling/kettle";
import { densityInAir } from "../../../src/trade/syrup/density";

const gallons = (value: number): HotLitres =>
  as<HotLitres>(value * LITRES_PER_GALLON);
const kettle: Kettle = {
  hotVolume: gallons(120),
  brix: as<Brix>(66.4),
  fill: as<Celsius>((187 - 32) / 1.8),
  leftBehind: gallons(1.5),
  purge: as<Kilograms>(60 * KG_PER_LB),
  bottle: as<ColdLitres>(0.252),
  breakage: as<Share>(0),
};
const kept = 1 - shrinkage(kettle.brix, kettle.fill);

test("the purge comes out of the first fill only", () => {
  const { first, later } = kettleFills(9000, kettle);
  const cold = 118.5 * LITRES_PER_GALLON * kept;
  const purged = (60 * KG_PER_LB) / densityInAir(kettle.brix);
  expect(later).toBe(Math.floor(cold / 0.252));
  expect(first).toBe(Math.floor((cold - purged) / 0.252));
});

test("a run that the first fill covers needs one; a bottle more needs two", () => {
  const { first } = kettleFills(1, kettle);
  expect(kettleFills(first, kettle).fills).toBe(1);
  expect(kettleFills(first + 1, kettle)).toMatchObject({
    fills: 2,
    lastBottles: 1,
  });
});

test("one bottle in the last fill takes that bottle hot over what stays behind", () => {
  const { first } = kettleFills(1, kettle);
  expect(
    kettleFills(first + 1, kettle).lastVolume / LITRES_PER_GALLON,
  ).toBeCloseTo(1.5 + 0.252 / kept / LITRES_PER_GALLON, 9);
});

test("bottles that break are filled too", () => {
  const half = { ...kettle, breakage: as<Share>(0.5) };
  expect(kettleFills(1, half).later).toBe(
    Math.floor(((118.5 * LITRES_PER_GALLON * kept) / 0.252) * 0.5),
  );
});

test("a kettle that fills no bottle is refused", () => {
  expect(() => kettleFills(1, { ...kettle, hotVolume: gallons(1.5) })).toThrow(
    /left behind/,
  );
  expect(() =>
    kettleFills(1, {
      ...kettle,
      hotVolume: gallons(1.55),
      purge: as<Kilograms>(0),
    }),
  ).toThrow("it does not fill one bottle");
});

test("the fills together make the run, one fewer would not, and none is over the working fill", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 60_000 }),
      fc.double({ min: 0, max: 0.2, noNaN: true }),
      (bottles, breakage) => {
        const plan = kettleFills(bottles, {
          ...kettle,
          breakage: as<Share>(breakage),
        });
        const upTo = (fills: number): number =>
          fills === 0 ? 0 : plan.first + (fills - 1) * plan.later;
        expect(upTo(plan.fills)).toBeGreaterThanOrEqual(bottles);
        expect(upTo(plan.fills - 1)).toBeLessThan(bottles);
        expect(plan.lastVolume).toBeLessThanOrEqual(
          kettle.hotVolume * (1 + 1e-9),
        );
        expect(plan.lastVolume).toBeGreaterThan(kettle.leftBehind);
      },
    ),
  );
});
