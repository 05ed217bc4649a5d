import { as, type Brix } from "../../src/measures/quantity";
import { density } from "../../src/trade/syrup/density";
import { agreesWithPrinted } from "../support/published";
import { revisedRule, ruleOf86 } from "./sap-rules";

/** Sugar in a gallon of syrup over sugar in a gallon of sap of 1 %: the sugar stays in the pan. */
const sapForSyrup = (brix: number): number =>
  (brix * density(as<Brix>(brix))) / density(as<Brix>(1));

// The rule is printed to whole gallons.
agreesWithPrinted(ruleOf86, sapForSyrup);
agreesWithPrinted(revisedRule, sapForSyrup, undefined, [
  {
    at: [66.9],
    within: 0.51,
    because:
      "by the same sum 66.9 °Bx takes 88.7; the revision does not quite follow its own derivation",
  },
]);
