import { sellingTerms as terms } from "../../terms/book-selling";
import { declareTable } from "../table";

export const overheads = declareTable({
  name: "Overheads",
  sheet: "Overheads",
  about: "The year's other bills and what each is shared out by.",
  csv: "yearly_overheads.csv",
  key: ["item", "season"],
  columns: {
    item: { heading: "Item", csv: "item", term: terms.overhead, width: 48 },
    perYear: { heading: "Per year", csv: "usd_per_year", term: terms.perYear },
    season: {
      heading: "Season",
      csv: "season",
      term: terms.season,
      format: "0",
    },
    sharedBy: {
      heading: "Shared by",
      csv: "shared_by",
      term: terms.sharedBy,
      width: 18,
    },
    shareToBulk: {
      heading: "Share to bulk",
      csv: "share_to_bulk_pct",
      csvPercent: true,
      term: terms.shareToBulk,
      mayBeBlank: true,
    },
    note: {
      heading: "Note",
      csv: "note",
      term: terms.note,
      mayBeBlank: true,
    },
  },
});
