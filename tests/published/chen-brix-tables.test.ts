import { as } from "../../src/measures/quantity";
import { poundsPerGallon as ourPounds } from "../../src/trade/syrup/density";
import { agreesWithPrinted } from "../support/published";
import { poundsPerGallon } from "./chen-brix-tables";

agreesWithPrinted(poundsPerGallon, (brix) => ourPounds(as(brix)), undefined, [
  {
    at: [5],
    within: 0.00081,
    because:
      "ours is 8.4852; the densities of NBS Circular C440 lie a trace higher and round up",
  },
]);
