import { packingTerms as terms } from "../../terms/book-packing";
import { declareTable } from "../table";
import { howBought, kindOfPart } from "./part-kind";

export const parts = declareTable({
  name: "Parts",
  sheet: "Parts",
  about: "Bottles, closures, labels, cases and the rest, one part a row.",
  csv: "packaging_parts.csv",
  key: ["part"],
  columns: {
    part: { heading: "Part", csv: "part", term: terms.part },
    description: {
      heading: "Description",
      csv: "description",
      term: terms.description,
      mayBeBlank: true,
      width: 40,
    },
    kind: {
      heading: "Kind",
      csv: "kind",
      term: terms.partKind,
      inferred: (cell) => kindOfPart(cell("description")),
    },
    piecesPerCarton: {
      heading: "Pieces per carton",
      csv: "pieces_per_carton",
      term: terms.piecesPerCarton,
    },
    minimumOrder: {
      heading: "Minimum order",
      csv: "minimum_order",
      term: terms.minimumOrder,
    },
    leadDays: {
      heading: "Lead days",
      csv: "lead_days",
      term: terms.leadDays,
      mayBeBlank: true,
    },
    spoilage: {
      heading: "Spoilage",
      csv: "spoilage_pct",
      csvPercent: true,
      term: terms.spoilage,
      usual: [0, 0.15],
    },
    onHand: {
      heading: "On hand",
      csv: "on_hand",
      term: terms.onHand,
      mayBeBlank: true,
    },
    freightPerOrder: {
      heading: "Freight per order",
      csv: "freight_per_order_usd",
      term: terms.freightPerOrder,
      mayBeBlank: true,
    },
    bought: {
      heading: "Bought",
      csv: "bought",
      term: terms.bought,
      inferred: (cell) =>
        howBought(cell("description"), cell("kind"), cell("onHand")),
      width: 14,
    },
  },
});
