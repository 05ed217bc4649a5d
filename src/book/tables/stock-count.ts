import { lotTerms } from "../../terms/book-lots";
import { barrelTerms as terms } from "../../terms/book-barrels";
import { declareTable } from "../table";

export const stockCount = declareTable({
  name: "StockCount",
  sheet: "Stock count",
  about: "What the last count found, one lot a row.",
  csv: "stock_count.csv",
  optional: true,
  key: ["lot"],
  columns: {
    lot: {
      heading: "Lot",
      csv: "lot",
      term: lotTerms.lot,
      refersTo: ["Lots.lot", "OakBarrels.barrel"],
    },
    book: { heading: "Book lb", csv: "book_lb", term: terms.bookWeight },
    counted: {
      heading: "Counted lb",
      csv: "counted_lb",
      term: terms.countedWeight,
      mayBeBlank: true,
    },
    difference: {
      heading: "Difference lb",
      csv: "difference_lb",
      term: lotTerms.derivedWeight,
      formula: (own) =>
        `=IF(${own("Counted lb")}="","",${own("Counted lb")}-${own("Book lb")})`,
    },
  },
});
