import { as, type Celsius } from "../../src/measures/quantity";
import { whereReaches } from "../../src/measures/root";
import { density } from "../../src/trade/syrup/density";
import { viscosity } from "../../src/trade/syrup/viscosity";
import { agreesWithPrinted } from "../support/published";
import { densitiesBySolids, viscosities } from "./rubber-handbook";

agreesWithPrinted(
  viscosities,
  (brix, celsius) => viscosity(as(brix), as<Celsius>(celsius)),
  {
    within: 0.0751,
    relative: true,
    because:
      "measured around 1918; above 0 °C the formula is up to 7.5 % higher",
  },
  [
    {
      at: [40, 0],
      within: 0.116,
      relative: true,
      because: "the formula is 12 % higher at 0 °C, colder than any filling",
    },
    {
      at: [60, 0],
      within: 0.139,
      relative: true,
      because: "the formula is 14 % higher at 0 °C, colder than any filling",
    },
  ],
);

// The table goes by grams of sucrose per litre at its temperature, so the Brix that holds so much is looked for.
agreesWithPrinted(
  densitiesBySolids,
  (grams, celsius) => {
    const solids = (brix: number): number =>
      (density(as(brix), as<Celsius>(celsius)) * 1000 * brix) / 100;
    return (
      density(as(whereReaches(solids, grams, 0, 85)), as<Celsius>(celsius)) *
      1000
    );
  },
  {
    within: 0.4,
    because:
      "the source is a straight-line fit to an old handbook table, not the table",
  },
);
