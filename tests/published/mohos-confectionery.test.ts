import { as } from "../../src/measures/quantity";
import { baume as ourBaume } from "../../src/trade/syrup/gravity";
import { agreesWithPrinted } from "../support/published";
import { baume } from "./mohos-confectionery";

agreesWithPrinted(baume, (brix) => ourBaume(as(brix)), {
  within: 0.047,
  because:
    "the table does not say which densities it rests on; on true gravity 20/20 it differs by up to 0.047",
});
