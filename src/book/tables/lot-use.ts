import { lotTerms as terms } from "../../terms/book-lots";
import { declareTable } from "../table";

export const lotUse = declareTable({
  name: "LotUse",
  sheet: "Lot use",
  about: "Every pound drawn from a lot or barrel, one draw a row.",
  csv: "lot_use.csv",
  key: [],
  columns: {
    date: { heading: "Date", csv: "date", term: terms.usedOn },
    from: {
      heading: "From",
      csv: "from_lot_or_barrel",
      term: terms.usedFrom,
      refersTo: ["Lots.lot", "OakBarrels.barrel"],
    },
    what: { heading: "What", csv: "what", term: terms.usedAs, width: 18 },
    to: { heading: "To", csv: "to", term: terms.usedTo, mayBeBlank: true },
    pounds: { heading: "Pounds", csv: "pounds", term: terms.pounds },
  },
});
