import { as, type Celsius } from "../../src/measures/quantity";
import { density } from "../../src/trade/syrup/density";
import { refractiveIndex } from "../../src/trade/syrup/refraction";
import { viscosity } from "../../src/trade/syrup/viscosity";
import { agreesWithPrinted } from "../support/published";
import { densities, indices, viscosities } from "./crc-handbook";

agreesWithPrinted(
  densities,
  (brix, celsius) => density(as(brix), as<Celsius>(celsius)) * 1000,
  {
    within: 0.3,
    because:
      "its densities differ from the sugar industry's polynomial by up to 0.3 kg/m³, 0.02 %",
  },
);
agreesWithPrinted(indices, (brix) => refractiveIndex(as(brix)), {
  within: 0.0002,
  because:
    "its indices are older than the fitted scale; they differ by up to 0.0002, at 80 %",
});
agreesWithPrinted(
  viscosities,
  (brix, celsius) => viscosity(as(brix), as<Celsius>(celsius)),
  {
    within: 0.034,
    relative: true,
    because:
      "the formula follows other measurements; handbooks differ among themselves by several per cent",
  },
);
