import { solidsLimits } from "../../src/standards/grades";
import { colorClass } from "../../src/trade/syrup/color";
import { betweenClasses, colorLimits, solids } from "./grade-rules";

test.each(colorLimits)(
  "syrup of exactly $atLeast % is still $name, a hair less is darker",
  ({ name, atLeast }) => {
    expect(colorClass(atLeast)).toBe(name);
    expect(colorClass(atLeast - 0.01)).not.toBe(name);
  },
);

test.each(betweenClasses)(
  "a transmission of $percent % is $name: the classes are half open",
  ({ percent, name }) => {
    expect(colorClass(percent)).toBe(name);
  },
);

test("whatever lets less through than Dark is Very Dark", () => {
  expect(colorClass(24.99)).toBe("Very Dark");
  expect(colorClass(0)).toBe("Very Dark");
});

test("the solids limits are those of the grade rules", () => {
  expect(solidsLimits).toEqual(solids);
});
