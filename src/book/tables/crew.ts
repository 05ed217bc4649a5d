import { lineTerms as terms } from "../../terms/book-lines";
import { declareTable } from "../table";

export const crew = declareTable({
  name: "Crew",
  sheet: "Crew",
  about: "Who stands at each line, one role a row.",
  csv: "line_crew.csv",
  key: ["line", "role"],
  columns: {
    line: {
      heading: "Line",
      csv: "line",
      term: terms.line,
      refersTo: ["Lines.line"],
    },
    role: {
      heading: "Role",
      csv: "role",
      term: terms.role,
      refersTo: ["Wages.role"],
      width: 20,
    },
    people: { heading: "People", csv: "people", term: terms.people },
    costPerHour: {
      heading: "Cost per hour",
      term: terms.crewCost,
      formula: (own) =>
        `=${own("People")}*INDEX(Wages[Loaded per hour],MATCH(${own("Role")},Wages[Role],0))`,
    },
  },
});
