import { as, type Celsius } from "../../src/measures/quantity";
import { density } from "../../src/trade/syrup/density";
import { agreesWithPrinted } from "../support/published";
import { densities } from "./torun-laboratory-tables";

agreesWithPrinted(
  densities,
  (brix, celsius) => density(as(brix), as<Celsius>(celsius)) * 1000,
  {
    within: 0.07,
    because:
      "the table holds the older Plato-type densities, which differ from today's by up to 0.07 kg/m³",
  },
);
