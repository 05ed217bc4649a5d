import { cell } from "./demo-rows";

const number = (name: string, ...args: readonly unknown[]): number =>
  Number(cell(name, ...args));

describe("1,000 gallons packed at 67.0 °Bx when 66.2 would do, at 2.55 a pound: what is given away?", () => {
  const actual = 67;
  const wanted = 66.2;
  /** Pounds of solids in a gallon. */
  const solids = (brix: number): number =>
    (number("POUNDS_PER_GALLON", brix) * brix) / 100;
  const extra = 1 - solids(wanted) / solids(actual);

  test("a gallon weighs 11.081 and 11.040 lb", () => {
    expect(number("POUNDS_PER_GALLON", actual)).toBeCloseTo(11.081, 3);
    expect(number("POUNDS_PER_GALLON", wanted)).toBeCloseTo(11.04, 3);
  });

  test("1.56 % of the solids, which is 440.69 of syrup", () => {
    // The scenario: 1 − 7.30848 ÷ 7.42427 = 1.5596 %, × 11.081 × 1,000 × 2.55 = 440.69. Its pounds a gallon are rounded:
    // half a unit of their last digit, 0.0005 of 11, is 0.0045 % of the solids in each of the two.
    const rounding = 2 * (0.0005 / 11.04);
    expect(Math.abs(extra - 0.015596)).toBeLessThan(rounding);
    const poured = number("POUNDS_PER_GALLON", actual) * 1000 * 2.55;
    expect(Math.abs(poured * extra - 440.69)).toBeLessThan(poured * rounding);
  });

  test("water brings it down, as a lot of 0 °Bx would", () => {
    // 1,000 lb × (67 ÷ 66.2 − 1) = 12.0846 lb.
    expect(number("BLEND_PARTNER", 1000, actual, 0, wanted)).toBeCloseTo(
      12.0846,
      4,
    );
    expect(number("WATER_FOR_BRIX", 1000, actual, wanted)).toBeCloseTo(
      12.0846,
      4,
    );
  });
});
