import fc from "fast-check";
import {
  as,
  type Brix,
  type Celsius,
  type Hours,
  type Kilograms,
  type Money,
  type PerHour,
  type Share,
} from "../../../src/measures/quantity";
import { heatCost, type Heating } from "../../../src/trade/costing/heat-cost";
import { anyBrix, near } from "../quantities";

const heating: Heating = {
  fuelPrice: as<Money>(2.65),
  fuelHeat: 91_500,
  efficiency: as<Share>(0.68),
  holdLoss: 14_000,
  start: as<Celsius>(150 / 9), // 62 °F
  pack: as<Celsius>(775 / 9), // 187 °F
  power: 6.5,
  electricity: as<Money>(0.178),
};
const run = {
  syrup: as<Kilograms>(400),
  brix: as<Brix>(66.4),
  hours: as<Hours>(31 / 12),
  bottles: 1200,
  rate: as<PerHour>(720),
};

test("holding the loop hot for three hours costs 1.79, by the worked example", () => {
  // 42,000 BTU ÷ 0.68 ÷ 91,500 × 2.65.
  const idle = { ...run, syrup: as<Kilograms>(0), bottles: 0 };
  expect(heatCost(heating, { ...idle, hours: as<Hours>(3) })).toBeCloseTo(
    1.79,
    2,
  );
});

test("pumps, coder and tunnel draw power only while bottles run", () => {
  const dark = heatCost({ ...heating, power: 0 }, run);
  // 6.5 kW × 1,200 ÷ 720 h × 0.178 = 1.9283.
  expect(heatCost(heating, run) - dark).toBeCloseTo(1.9283, 4);
  const longer = { ...run, hours: as<Hours>(run.hours + 2) };
  // Two more hours of set-up hold the loop and draw nothing: 28,000 ÷ 0.68 ÷ 91,500 × 2.65 = 1.1925.
  expect(heatCost(heating, longer) - heatCost(heating, run)).toBeCloseTo(
    1.1925,
    4,
  );
});

test("twice the syrup takes twice the warming", () => {
  const quiet = { ...heating, holdLoss: 0, power: 0 };
  fc.assert(
    fc.property(anyBrix, fc.integer({ min: 1, max: 9000 }), (brix, kg) =>
      near(
        heatCost(quiet, { ...run, brix, syrup: as<Kilograms>(2 * kg) }),
        2 * heatCost(quiet, { ...run, brix, syrup: as<Kilograms>(kg) }),
      ),
    ),
  );
});

test("warming in two steps costs what warming at once does", () => {
  const quiet = { ...heating, holdLoss: 0, power: 0 };
  fc.assert(
    fc.property(
      anyBrix,
      fc.double({ min: 17, max: 86, noNaN: true }),
      (brix, at) => {
        const between = as<Celsius>(at);
        return near(
          heatCost({ ...quiet, pack: between }, { ...run, brix }) +
            heatCost({ ...quiet, start: between }, { ...run, brix }),
          heatCost(quiet, { ...run, brix }),
        );
      },
    ),
  );
});
