import { packingTerms } from "../../terms/book-packing";
import { sellingTerms as terms } from "../../terms/book-selling";
import { declareTable } from "../table";

export const seasonTotals = declareTable({
  name: "SeasonTotals",
  sheet: "Season totals",
  about:
    "What a closed season came to; its bills were shared out over it, and the next season's are until that has done as much.",
  csv: "season_totals.csv",
  optional: true,
  comesFromRoll: true,
  key: ["season", "what", "of"],
  columns: {
    season: {
      heading: "Season",
      csv: "season",
      term: terms.closedSeason,
      format: "0",
    },
    what: {
      heading: "What",
      csv: "what",
      term: terms.seasonMeasure,
      width: 18,
    },
    of: {
      heading: "Of",
      csv: "of",
      term: terms.measuredOf,
      mayBeBlank: true,
      width: 18,
    },
    amount: {
      heading: "Amount",
      csv: "amount",
      term: terms.seasonAmount,
      format: "#,##0.0",
    },
    note: {
      heading: "Note",
      csv: "note",
      term: packingTerms.note,
      mayBeBlank: true,
    },
  },
});
