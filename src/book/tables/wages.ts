import { lineTerms as terms } from "../../terms/book-lines";
import { declareTable } from "../table";

export const wages = declareTable({
  name: "Wages",
  sheet: "Wages",
  about: "What an hour of each role costs, one role a row.",
  csv: "wages.csv",
  key: ["role"],
  columns: {
    role: { heading: "Role", csv: "role", term: terms.role, width: 20 },
    hourly: {
      heading: "Hourly",
      csv: "hourly_usd",
      term: terms.hourly,
      usual: [5, 150],
    },
    addOns: {
      heading: "Add ons",
      csv: "payroll_add_on_pct",
      csvPercent: true,
      term: terms.addOns,
      usual: [0.02, 0.6],
    },
    loadedPerHour: {
      heading: "Loaded per hour",
      csv: "loaded_hourly_usd",
      term: terms.loaded,
      formula: (own) =>
        `=SYRUP.LOADED_WAGE(${own("Hourly")},${own("Add ons")})`,
    },
  },
});
