import { packingTerms as terms } from "../../terms/book-packing";
import { declareTable } from "../table";

export const partPrices = declareTable({
  name: "PartPrices",
  sheet: "Part prices",
  about: "The price of each part from each quantity up, one break a row.",
  csv: "packaging_price_breaks.csv",
  key: ["part", "fromQuantity"],
  columns: {
    part: {
      heading: "Part",
      csv: "part",
      term: terms.part,
      refersTo: ["Parts.part"],
    },
    fromQuantity: {
      heading: "From quantity",
      csv: "from_quantity",
      term: terms.fromQuantity,
    },
    priceEach: {
      heading: "Price each",
      csv: "unit_price_usd",
      term: terms.priceEach,
      format: "#,##0.0000",
    },
  },
});
