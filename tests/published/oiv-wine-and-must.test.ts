import { as, type Celsius } from "../../src/measures/quantity";
import { refractometerBrix } from "../../src/trade/syrup/refraction";
import { agreesWithPrinted } from "../support/published";
import { corrections } from "./oiv-wine-and-must";

agreesWithPrinted(
  corrections,
  (brix, celsius) => refractometerBrix(as(brix), as<Celsius>(celsius)) - brix,
  {
    within: 0.006,
    because: "our fit leaves 0.006 at most over the printed cells",
  },
);
