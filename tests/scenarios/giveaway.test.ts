import { as, type Brix } from "../../src/measures/quantity";
import { whereReaches } from "../../src/measures/root";
import { poundsPerGallon } from "../../src/trade/syrup/density";
import { asked } from "./asked";
import { cell } from "./demo-rows";

/** The scenario counts with 11.05 lb/gal; this is the syrup that weighs so much. */
const scenarioBrix = whereReaches(
  (b) => poundsPerGallon(as<Brix>(b)),
  11.05,
  0,
  85,
);

const cost = (above: number, brix = scenarioBrix): number =>
  Number(cell("OVERFILL_COST", 253.2, above, 12_000, brix, 2.6));

describe("giveaway on RUN-19: 12,000 bottles of 250 mL at 253.2 on average", () => {
  test("291.44 over the declared volume", () => {
    // 3.2 × 12,000 = 38,400 mL = 10.1442 gal × 11.05 = 112.09 lb × 2.60.
    expect(cost(250)).toBeCloseTo(291.44, 2);
  });

  test("109.29 of it above the house goal of 252, which can be avoided", () => {
    // 1.2 × 12,000 = 14,400 mL = 3.8041 gal = 42.04 lb.
    expect(cost(252)).toBeCloseTo(109.29, 2);
  });

  test("at the run's own 66.2 °Bx it is 0.1 % less", () => {
    // 66.2 °Bx weighs 11.040 lb/gal; the scenario's 11.05 is rounded for the farm.
    expect(cost(250, 66.2) / cost(250)).toBeCloseTo(11.04 / 11.05, 4);
  });

  test("the sentence shows the millilitres, the pounds and the money", () => {
    const { why } = asked("OVERFILL_COST", [
      253.2,
      250,
      12_000,
      scenarioBrix,
      2.6,
    ]);
    expect(why).toContain("253.2 mL − 250 mL = 3.2 mL × 12,000 bottles");
    expect(why).toContain("112.09");
    expect(why).toMatch(/= \$291\.44$/);
  });

  test("a run below the label is short, which is no saving", () => {
    const { answer, why } = asked(
      "OVERFILL_COST",
      [248.82, 250, 840, 66.1, 2.6],
    );
    expect(answer).toBeLessThan(0);
    expect(why).toMatch(/= −\$7\.5125: short, not a saving$/);
  });
});

describe("what to set the machine to", () => {
  test("a tight machine may run at the label, a loose one must run above", () => {
    // 250 − 9 + 2.575829 × spread, against 250.
    expect(cell("FILL_TARGET", 250, 1.37, 9)).toBeCloseTo(250, 9);
    expect(cell("FILL_TARGET", 250, 5, 9)).toBeCloseTo(253.879, 3);
  });

  test("the house margin moves the average, not the single bottles", () => {
    expect(cell("FILL_TARGET", 250, 1.37, 9, "0.5 %", 2)).toBeCloseTo(252, 9);
    expect(cell("FILL_TARGET", 250, 5, 9, 0.005, 2)).toBeCloseTo(253.879, 3);
  });

  test("bottles that do not vary at all ask for more of them", () => {
    expect(() => asked("FILL_TARGET", [250, 0, 9])).toThrow(
      "spread: bottles that are all alike were too few, or the scale too coarse; weigh more bottles",
    );
  });
});
