import { lotTerms } from "../../terms/book-lots";
import { barrelTerms as terms } from "../../terms/book-barrels";
import { declareTable } from "../table";

export const oakBarrels = declareTable({
  name: "OakBarrels",
  sheet: "Oak barrels",
  about: "Syrup aging in oak, one filled barrel a row.",
  csv: "oak_barrels.csv",
  optional: true,
  key: ["barrel"],
  columns: {
    barrel: { heading: "Barrel", csv: "barrel", term: terms.barrel },
    size: { heading: "Size gal", csv: "size_gal", term: terms.barrelSize },
    cost: {
      heading: "Barrel cost",
      csv: "barrel_cost_usd",
      term: terms.barrelCost,
    },
    fillNumber: {
      heading: "Fill number",
      csv: "fill_number",
      term: terms.fillNumber,
    },
    filledOn: { heading: "Filled on", csv: "filled_on", term: terms.filledOn },
    emptiedOn: {
      heading: "Emptied on",
      csv: "emptied_on",
      term: terms.emptiedOn,
      mayBeBlank: true,
    },
    gallonsIn: {
      heading: "Gallons in",
      csv: "gallons_in",
      term: terms.gallonsIn,
      mayBeBlank: true,
      format: "0.0",
    },
    poundsIn: {
      heading: "Pounds in",
      csv: "pounds_in",
      term: terms.poundsIn,
    },
    poundsOut: {
      heading: "Pounds out",
      csv: "pounds_out",
      term: terms.poundsOut,
      mayBeBlank: true,
    },
    loss: {
      heading: "Loss lb",
      csv: "loss_lb",
      term: lotTerms.derivedWeight,
      formula: (own) =>
        `=IF(${own("Pounds out")}="","",${own("Pounds in")}-${own("Pounds out")})`,
    },
    syrupCostIn: {
      heading: "Syrup cost in",
      csv: "syrup_cost_in_usd",
      term: terms.syrupCostIn,
      mayBeBlank: true,
    },
    left: {
      heading: "Left lb",
      csv: "still_in_barrel_stock_lb",
      term: lotTerms.derivedWeight,
      formula: (own) =>
        `=IF(${own("Pounds out")}="",${own("Pounds in")},${own("Pounds out")})-SUMIFS(LotUse[Pounds],LotUse[From],${own("Barrel")})`,
    },
  },
});
