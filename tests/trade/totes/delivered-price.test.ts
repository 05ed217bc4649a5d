import {
  as,
  type Brix,
  type Kilograms,
  type Money,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import {
  freightPerPound,
  priceBothWays,
} from "../../../src/trade/totes/delivered-price";
import { pricePerPound } from "../../../src/trade/totes/price-per-pound";
import { saleAmount, saleBases } from "../../../src/trade/totes/sale-amount";

const lb = (pounds: number): Kilograms => as<Kilograms>(pounds * KG_PER_LB);

test("1,850 for a load of 40,800 lb is 4.53 ¢ a pound", () => {
  // Hand arithmetic: 1,850 ÷ 40,800 = 0.045343.
  expect(freightPerPound(as<Money>(1850), lb(40_800))).toBeCloseTo(0.045343, 6);
});

test("a delivered price leaves its freight less at our dock; a dock price costs the buyer its freight more", () => {
  expect(priceBothWays(3.0791, "delivered", 0.0453)).toEqual({
    freight: 0.0453,
    dock: 3.0791 - 0.0453,
    delivered: 3.0791,
  });
  expect(priceBothWays(2.92, "dock", 0.04)).toEqual({
    freight: 0.04,
    dock: 2.92,
    delivered: 2.96,
  });
});

test("law: the same syrup on the same footing is worth the same both ways round", () => {
  const { dock } = priceBothWays(2.96, "delivered", 0.04);
  expect(priceBothWays(dock, "dock", 0.04).delivered).toBeCloseTo(2.96, 12);
});

test.each(saleBases)(
  "a price %s for a pound is what a million pounds bring, by the pound",
  (basis) => {
    const brix = as<Brix>(66.4);
    expect(pricePerPound(8.95, basis, brix)).toBeCloseTo(
      saleAmount(lb(1e6), 8.95, basis, brix) / 1e6,
      7,
    );
  },
);
