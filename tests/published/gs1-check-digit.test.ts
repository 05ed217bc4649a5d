import { checkDigit, withCheckDigit } from "../../src/trade/codes/check-digit";
import { printedExamples } from "./gs1-check-digit";

test.each(printedExamples)("$page: $digits has $check", ({ digits, check }) => {
  expect(checkDigit(digits)).toBe(check);
  expect(withCheckDigit(digits)).toBe(`${digits}${check}`);
});
