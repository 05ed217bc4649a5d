import { runTerms as terms } from "../../terms/book-runs";
import { declareTable } from "../table";

export const fillChecks = declareTable({
  name: "FillChecks",
  sheet: "Fill checks",
  about: "Bottles weighed empty and full, one bottle a row.",
  csv: "fill_checks.csv",
  optional: true,
  key: ["run", "bottle"],
  columns: {
    run: {
      heading: "Run",
      csv: "run",
      term: terms.run,
      refersTo: ["Runs.run"],
    },
    bottle: { heading: "Bottle", csv: "bottle", term: terms.bottleNumber },
    empty: {
      heading: "Empty g",
      csv: "empty_g",
      term: terms.emptyWeight,
      format: "0.0",
    },
    full: {
      heading: "Full g",
      csv: "full_g",
      term: terms.fullWeight,
      format: "0.0",
    },
  },
});
