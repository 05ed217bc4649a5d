import { packingTerms } from "../../terms/book-packing";
import { energyTerms } from "../../terms/book-named";
import { text } from "../../terms/term";
import { declareTable } from "../table";

export const energy = declareTable({
  name: "Energy",
  sheet: "Energy",
  about: "What heating and running cost, one figure a row.",
  csv: "energy.csv",
  key: ["item"],
  columns: {
    item: {
      heading: "Item",
      csv: "item",
      term: text({
        label: "Item",
        about: "name of the figure",
        example: "Propane price",
        french: "Poste",
      }),
      width: 32,
    },
    value: {
      heading: "Value",
      csv: "value",
      term: text({
        label: "Value",
        about: "a number or words, as the item needs",
        example: "2.65",
        french: "Valeur",
      }),
      byName: energyTerms,
      mayBeBlank: true,
      width: 14,
    },
    unit: {
      heading: "Unit",
      csv: "unit",
      term: text({
        label: "Unit",
        about: "unit of the value, if it has one",
        example: "USD per gallon",
        french: "Unité",
      }),
      mayBeBlank: true,
      width: 20,
    },
    note: {
      heading: "Note",
      csv: "note",
      term: packingTerms.note,
      mayBeBlank: true,
    },
  },
});
