import {
  as,
  type Brix,
  type ColdLitres,
  type Kilograms,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import {
  type Packed,
  packedWeights,
} from "../../../src/trade/costing/pallet-weight";

const kg = (value: number): Kilograms => as<Kilograms>(value);
const packed: Packed = {
  fill: as<ColdLitres>(0.252),
  brix: as<Brix>(66.6),
  emptyBottle: kg(0.248),
  emptyCase: kg(0.45),
  emptyPallet: kg(45 * KG_PER_LB),
  perCase: 12,
  perPallet: 84,
};

test("1,500 bottles: a case is 16.39 lb, a full pallet 1,422 lb, 41 cases and their pallet 717 lb", () => {
  // The worked example rounds the case to 16.39 lb and goes on with it: 84 × 16.39 + 45, 41 × 16.39 + 45.
  const weights = packedWeights(packed, {
    fullPallets: 1,
    casesOnLast: 41,
    looseBottles: 0,
  });
  expect(weights.bottle * 1000).toBeCloseTo(581.95, 1);
  expect(weights.case / KG_PER_LB).toBeCloseTo(16.39, 2);
  expect(Math.abs(weights.fullPallet / KG_PER_LB - 1422)).toBeLessThan(0.5);
  expect(Math.abs((weights.lastPallet ?? 0) / KG_PER_LB - 717)).toBeLessThan(
    0.5,
  );
  expect(weights.all).toBeCloseTo(
    weights.fullPallet + (weights.lastPallet ?? 0),
    9,
  );
});

test("bottles that fill no case stand in one more, and full pallets have no last one", () => {
  const loose = packedWeights(packed, {
    fullPallets: 1,
    casesOnLast: 0,
    looseBottles: 5,
  });
  expect(loose.lastPallet).toBeCloseTo(
    5 * loose.bottle + 0.45 + 45 * KG_PER_LB,
    9,
  );
  const full = packedWeights(packed, {
    fullPallets: 2,
    casesOnLast: 0,
    looseBottles: 0,
  });
  expect(full.lastPallet).toBeUndefined();
  expect(full.all).toBeCloseTo(2 * full.fullPallet, 9);
});
