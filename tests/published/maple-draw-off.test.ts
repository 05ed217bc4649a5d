import { as } from "../../src/measures/quantity";
import { boilingPoint } from "../../src/trade/syrup/boiling";
import { agreesWithPrinted } from "../support/published";
import { elevations } from "./maple-draw-off";

agreesWithPrinted(
  elevations,
  (brix) =>
    boilingPoint(as(brix), as(101.325)) - boilingPoint(as(0), as(101.325)),
);
