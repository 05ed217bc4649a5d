import { packingTerms as terms } from "../../terms/book-packing";
import { declareTable } from "../table";

export const productMaterials = declareTable({
  name: "ProductMaterials",
  sheet: "Product materials",
  about: "What each product is packed with, one part a row.",
  csv: "sku_materials.csv",
  key: ["product", "part", "per"],
  columns: {
    product: {
      heading: "Product",
      csv: "sku",
      term: terms.product,
      refersTo: ["Products.product"],
      width: 12,
    },
    part: {
      heading: "Part",
      csv: "part",
      term: terms.part,
      refersTo: ["Parts.part"],
    },
    quantity: {
      heading: "Quantity",
      csv: "quantity",
      term: terms.quantity,
    },
    per: { heading: "Per", csv: "per", term: terms.per, width: 20 },
    note: {
      heading: "Note",
      csv: "note",
      term: terms.note,
      mayBeBlank: true,
    },
  },
});
