import { as } from "../../src/measures/quantity";
import { poundsPerGallon as ourPounds } from "../../src/trade/syrup/density";
import {
  baume as ourBaume,
  specificGravity,
} from "../../src/trade/syrup/gravity";
import { agreesWithPrinted } from "../support/published";
import { baume, gravities, poundsPerGallon } from "./asadi-beet-sugar-handbook";

agreesWithPrinted(gravities, (brix) => specificGravity(as(brix)), {
  within: 0.00006,
  because: "older densities, as in the tables of Plato",
});
agreesWithPrinted(poundsPerGallon, (brix) => ourPounds(as(brix)), {
  within: 0.0055,
  because: "the last printed digit was rounded once more from older densities",
});
agreesWithPrinted(baume, (brix) => ourBaume(as(brix)), {
  within: 0.0502,
  because: "half the last printed digit and a trace of the older densities",
});
