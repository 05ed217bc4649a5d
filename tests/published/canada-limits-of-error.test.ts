import { allowedShort } from "../../src/trade/contents/allowed-short";
import { mL } from "../scenarios/in-pounds";
import { agreesWithShortfalls } from "../support/shortfalls";
import { canadaShortfalls } from "./canada-limits-of-error";

agreesWithShortfalls(canadaShortfalls, "Canada", "allowed");

test("nothing is printed above 50 L", () => {
  expect(() => allowedShort(mL(50_001), "Canada")).toThrow(
    "declared: 50,001 mL is outside the Canada table, which is for 0 to 50,000 mL",
  );
});
