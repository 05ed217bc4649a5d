import { digitsText } from "./codes";
import { choice, mass, money, share } from "./term";

/** What a buyer weighs, what a tote may weigh, and who pays its way. */
export const loadTerms = {
  buyerNet: mass({
    label: "Buyer's net weight",
    about: "net weight the buyer reports; blank while none is reported",
    unit: "lb",
    above: 0,
    example: "2,890",
    french: "Poids net de l'acheteur",
  }),
  plateLimit: mass({
    label: "Plate limit",
    about: "largest gross weight marked on the tote's plate",
    unit: "lb",
    above: 0,
    example: "3,300 lb",
    french: "Limite de la plaque",
  }),
  delivery: choice({
    label: "Dock or delivered",
    about: "whether the price holds at our dock or delivered to the buyer",
    choices: ["dock", "delivered"],
    example: "delivered",
    french: "Quai ou livré",
  }),
  freight: money({
    label: "Freight of a load",
    about: "what the carrier charges for one load, in the price's own money",
    unit: "a load",
    min: 0,
    example: "1,850",
    french: "Fret d'un chargement",
  }),
  loadWeight: mass({
    label: "Load",
    about: "net weight of syrup that the freight of a load carries",
    unit: "lb",
    above: 0,
    example: "40,800",
    french: "Chargement",
  }),
} as const;

/** Rows of the Settings table about totes and their papers. */
export const toteSettingTerms = {
  "Weight tolerance": share({
    label: "Weight tolerance",
    about:
      "how far a buyer's net weight may lie from ours before it is a dispute",
    max: 0.1,
    example: "0.5 %",
    french: "Tolérance de poids",
  }),
  "Tote plate limit": mass({
    label: "Tote plate limit",
    about: "largest gross weight marked on the plates of the farm's totes",
    unit: "lb",
    above: 0,
    example: "3,300",
    french: "Limite de plaque des citernes",
  }),
  "Company prefix": digitsText({
    label: "Company prefix",
    about: "the farm's own prefix for bar codes, 4 to 12 digits, as text",
    example: "0400001",
    french: "Préfixe d'entreprise",
  }),
  "Tote item number": digitsText({
    label: "Tote item number",
    about:
      "the 14 digits of bulk syrup sold by measured weight, beginning with 9",
    example: "90400000100008",
    french: "Numéro d'article des citernes",
  }),
} as const;
