import { packingTerms } from "../../terms/book-packing";
import { settingTerms } from "../../terms/book-named";
import { text } from "../../terms/term";
import { declareTable } from "../table";

export const settings = declareTable({
  name: "Settings",
  sheet: "Settings",
  about: "The farm's own figures and ways, one a row.",
  csv: "farm_settings.csv",
  key: ["setting"],
  columns: {
    setting: {
      heading: "Setting",
      csv: "setting",
      term: text({
        label: "Setting",
        about: "name of the setting",
        example: "Kettle working fill",
        french: "Réglage",
      }),
      width: 36,
    },
    value: {
      heading: "Value",
      csv: "value",
      term: text({
        label: "Value",
        about: "a number, a date or words, as the setting needs",
        example: "120",
        french: "Valeur",
      }),
      byName: settingTerms,
      mayBeBlank: true,
      width: 28,
    },
    unit: {
      heading: "Unit",
      csv: "unit",
      term: text({
        label: "Unit",
        about: "unit of the value, if it has one",
        example: "gal",
        french: "Unité",
      }),
      mayBeBlank: true,
      width: 24,
    },
    note: {
      heading: "Note",
      csv: "note",
      term: packingTerms.note,
      mayBeBlank: true,
    },
  },
});
