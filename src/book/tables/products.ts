import { barrelTerms } from "../../terms/book-barrels";
import { packingTerms as terms } from "../../terms/book-packing";
import { declareTable } from "../table";

export const products = declareTable({
  name: "Products",
  sheet: "Products",
  about: "Everything we bottle, one product a row.",
  csv: "skus.csv",
  key: ["product"],
  columns: {
    product: {
      heading: "Product",
      csv: "sku",
      term: terms.product,
      width: 12,
    },
    description: {
      heading: "Description",
      csv: "description",
      term: terms.description,
      mayBeBlank: true,
    },
    family: {
      heading: "Family",
      csv: "family",
      term: terms.family,
      mayBeBlank: true,
    },
    declaredText: {
      heading: "Declared text",
      csv: "declared_text",
      term: terms.declaredText,
      mayBeBlank: true,
      width: 24,
    },
    declared: {
      heading: "Declared mL",
      csv: "declared_ml",
      term: terms.declared,
      usual: [20, 10_000],
      format: "#,##0.00",
    },
    bottlesPerCase: {
      heading: "Bottles per case",
      csv: "bottles_per_case",
      term: terms.bottlesPerCase,
    },
    casesPerLayer: {
      heading: "Cases per layer",
      csv: "cases_per_layer",
      term: terms.casesPerLayer,
    },
    layersPerPallet: {
      heading: "Layers per pallet",
      csv: "layers_per_pallet",
      term: terms.layersPerPallet,
    },
    fillTime: {
      heading: "Fill seconds",
      csv: "fill_seconds",
      term: terms.fillTime,
      usual: [1, 300],
    },
    emptyBottle: {
      heading: "Empty bottle g",
      csv: "empty_bottle_g",
      term: terms.emptyBottle,
      mayBeBlank: true,
    },
    fill: {
      heading: "Fill mL at 68 °F",
      csv: "target_fill_ml_at_68F",
      term: terms.fill,
      format: "#,##0.0",
    },
    labelOwner: {
      heading: "Label owner",
      csv: "label_owner",
      term: terms.labelOwner,
      mayBeBlank: true,
    },
    syrupKind: {
      heading: "Syrup kind",
      csv: "syrup_kind",
      term: barrelTerms.syrupKind,
    },
    organic: {
      heading: "Organic",
      csv: "organic",
      term: terms.organicProduct,
      blankIs: "no",
    },
    bottleBarcode: {
      heading: "Bottle barcode",
      csv: "bottle_barcode_number",
      term: terms.bottleBarcode,
      mayBeBlank: true,
      format: "@",
      width: 16,
    },
    caseBarcode: {
      heading: "Case barcode",
      csv: "case_barcode_number",
      term: terms.caseBarcode,
      mayBeBlank: true,
      format: "@",
      width: 17,
    },
    usualLine: {
      heading: "Usual line",
      csv: "usual_line",
      term: terms.usualLine,
      mayBeBlank: true,
      refersTo: ["Lines.line"],
    },
  },
});
