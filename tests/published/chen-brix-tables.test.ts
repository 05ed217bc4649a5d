import { as } from "../../src/measures/quantity";
import { poundsPerGallon as ourPounds } from "../../src/trade/syrup/density";
import { agreesWithPrinted } from "../support/published";
import { poundsPerGallon } from "./chen-brix-tables";

agreesWithPrinted(poundsPerGallon, (brix) => ourPounds(as(brix)), {
  within: 0.00085,
  because: "older densities of NBS Circular C440",
});
