import { as } from "../../src/measures/quantity";
import { poundsPerGallon as ourPounds } from "../../src/trade/syrup/density";
import { agreesWithPrinted } from "../support/published";
import { poundsPerGallon } from "./extension-maple-figures";

agreesWithPrinted(poundsPerGallon, (brix) => ourPounds(as(brix)), {
  within: 0.003,
  because:
    "the figures rest on older densities, 0.003 lb/gal below today's, a constant 0.024 %",
});

test("the three figures differ from ours by one and the same factor", () => {
  const factor = 1.000238;
  for (const [brix = Number.NaN, printed = Number.NaN] of poundsPerGallon.rows)
    expect(Math.abs(ourPounds(as(brix)) - printed * factor)).toBeLessThan(
      0.0005,
    );
});
