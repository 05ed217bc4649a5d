import { as, type Celsius } from "../../src/measures/quantity";
import { refractometerBrix } from "../../src/trade/syrup/refraction";
import { agreesWithPrinted } from "../support/published";
import { corrections } from "./gost-refractometer";

agreesWithPrinted(
  corrections,
  (brix, celsius) => refractometerBrix(as(brix), as<Celsius>(celsius)) - brix,
  {
    within: 0.028,
    because:
      "an older table than the one fitted; the two really differ at 65 % and 10 °C (−0.75 and −0.78)",
  },
);
