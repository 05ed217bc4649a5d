import { cell } from "./demo-rows";

describe("1,500 bottles: how many pallets, how heavy, and which numbers go on them?", () => {
  test("125 cases, 84 a pallet: one full, 41 on the second, nothing loose", () => {
    expect(cell("PALLETS", 1500, 12, 14, 6)).toEqual([[1, 41, 0]]);
  });

  test("a bottle is 581.95 g, a case 16.39 lb, a full pallet 1,422 lb", () => {
    // The scenario takes 1.3252 g/mL for 66.6 °Bx, rounded to four decimals: 252 mL × 0.00005 is 0.013 g.
    const syrup = Number(cell("WEIGHT_OF", "252 mL", 66.6, 68, "g"));
    const bottle = 248 + syrup;
    expect(Math.abs(bottle - 581.95)).toBeLessThan(0.05);
    const packed = (12 * bottle + 450) / 453.59237;
    expect(packed).toBeCloseTo(16.39, 2);
    // The scenario goes on with the rounded 16.39 lb: 84 × 0.005 = 0.42.
    expect(Math.abs(84 * packed + 45 - 1422)).toBeLessThan(0.5);
  });

  test("the check digit of 40000100100 is 4", () => {
    expect(cell("CHECK_DIGIT", "40000100100")).toBe(4);
    expect(cell("WITH_CHECK_DIGIT", "40000100100")).toBe("400001001004");
  });

  test("the case with a leading 1 is 10400001001001", () => {
    expect(cell("CASE_CODE", "400001001004", 1)).toBe("10400001001001");
  });

  test("a number cell is refused, because a worksheet number has no leading zeros", () => {
    expect(() => cell("CASE_CODE", 400_001_001_004)).toThrow(/type it as text/);
  });
});
