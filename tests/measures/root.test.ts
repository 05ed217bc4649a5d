import { whereReaches } from "../../src/measures/root";

test("a rising function is inverted to the last digit", () => {
  expect(whereReaches((x) => x * x, 2, 0, 2)).toBeCloseTo(Math.SQRT2, 14);
});

test("a value at an end is found there", () => {
  expect(whereReaches((x) => x, 0, 0, 85)).toBeCloseTo(0, 12);
  expect(whereReaches((x) => x, 85, 0, 85)).toBeCloseTo(85, 12);
});
