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
agreesWithPrinted(poundsPerGallon, (brix) => ourPounds(as(brix)), undefined, [
  {
    at: [10],
    within: 0.0054,
    because:
      "ours is 8.6547 and just rounds down, the older densities just round up",
  },
]);
agreesWithPrinted(baume, (brix) => ourBaume(as(brix)), undefined, [
  {
    at: [6],
    within: 0.0502,
    because:
      "ours is 3.3499 and just rounds down, the older densities just round up",
  },
]);
