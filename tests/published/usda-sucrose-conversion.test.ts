import { as } from "../../src/measures/quantity";
import { densityInAir } from "../../src/trade/syrup/density";
import { agreesWithPrinted } from "../support/published";
import { apparentGravities } from "./usda-sucrose-conversion";

// Apparent gravity is the ratio of two weighings in air, which is how the table names it.
agreesWithPrinted(
  apparentGravities,
  (brix) => densityInAir(as(brix)) / densityInAir(as(0)),
  {
    within: 0.000022,
    because:
      "it rests on older densities, which lie up to 0.02 kg/m³ above today's in thin solutions",
  },
);
