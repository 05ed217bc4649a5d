import { barrelTerms as terms } from "../../terms/book-barrels";
import { declareTable } from "../table";

export const bulkPrices = declareTable({
  name: "BulkPrices",
  sheet: "Bulk prices",
  about: "What bulk syrup costs today and since when, one price a row.",
  csv: "bulk_prices.csv",
  key: ["syrupKind", "validFrom"],
  columns: {
    syrupKind: {
      heading: "Syrup kind",
      csv: "syrup_kind",
      term: terms.syrupKind,
    },
    validFrom: {
      heading: "Valid from",
      csv: "valid_from",
      term: terms.validFrom,
    },
    pricePerPound: {
      heading: "Price per lb",
      csv: "price_per_lb",
      term: terms.bulkPrice,
      usual: [0.5, 10],
    },
  },
});
