import { as } from "../../src/measures/quantity";
import { baume as ourBaume } from "../../src/trade/syrup/gravity";
import { agreesWithPrinted } from "../support/published";
import { baume } from "./maple-density-rule";

agreesWithPrinted(baume, (brix) => ourBaume(as(brix)));
