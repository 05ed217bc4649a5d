import { as } from "../../src/measures/quantity";
import { boilingPoint } from "../../src/trade/syrup/boiling";
import { agreesWithPrinted } from "../support/published";
import { elevations } from "./maple-draw-off";

// A handbook's 7.0 °C at 75 % is 0.3 °C above ours; it is known from memory only, so it is no row here.
agreesWithPrinted(
  elevations,
  (brix) =>
    boilingPoint(as(brix), as(101.325)) - boilingPoint(as(0), as(101.325)),
);
