import type { ColdLitres } from "../measures/quantity";
import {
  choice,
  list,
  listWithBlanks,
  mass,
  number,
  share,
  text,
  volume,
} from "./term";

const bottleVolume = volume<ColdLitres>({
  label: "Volume",
  about: "what a bottle holds, at 68 °F",
  unit: "mL",
  min: 0,
  example: "249.5 mL",
  french: "Volume",
});

const head = number({
  label: "Head",
  about: "number of the filling head",
  unit: "",
  whole: true,
  min: 1,
  example: "3",
  french: "Bec",
});

const volumesSaid = {
  label: "Volumes",
  about: "what each bottle weighed holds, at 68 °F",
  example: "249.5, 250.2, 248.9",
  french: "Volumes",
} as const;

export const contentsTerms = {
  gross: mass({
    label: "Gross",
    about: "full bottle on the scale",
    unit: "g",
    min: 0,
    example: "579.8 g",
    french: "Poids brut",
  }),
  tare: mass({
    label: "Tare",
    about: "the same bottle empty on the scale",
    unit: "g",
    min: 0,
    example: "248.3 g",
    french: "Tare",
  }),
  label: text({
    label: "Label",
    about: "declaration of contents as the label has it, with units",
    example: "12 fl oz (355 mL)",
    french: "Étiquette",
  }),
  volumes: list(bottleVolume, volumesSaid),
  volumesWithBlanks: listWithBlanks(bottleVolume, volumesSaid),
  declared: volume<ColdLitres>({
    label: "Declared volume",
    about: "volume declared on the label",
    unit: "mL",
    above: 0,
    example: "250 mL",
    french: "Volume déclaré",
  }),
  lotSize: number({
    label: "Lot size",
    about: "bottles in the lot",
    unit: "bottles",
    whole: true,
    min: 1,
    example: "1,200",
    french: "Taille du lot",
  }),
  sample: number({
    label: "Bottles weighed",
    about: "bottles in the sample",
    unit: "bottles",
    whole: true,
    min: 1,
    max: 10_000,
    example: "12",
    french: "Bouteilles pesées",
  }),
  rule: choice({
    label: "Rule",
    about:
      "US: NIST Handbook 133 category A; EU: Directive 76/211/EEC; OIML: R 87",
    choices: ["US", "EU", "OIML"],
    example: "US",
    french: "Règle",
  }),
  shortfallRule: choice({
    label: "Rule",
    about: "whose table of allowed shortfalls",
    choices: ["EU", "OIML", "Canada", "US"],
    example: "EU",
    french: "Règle",
  }),
  allowedShort: volume<ColdLitres>({
    label: "Allowed shortfall",
    about: "how far one bottle may be short of the declared volume",
    unit: "mL",
    min: 0,
    example: "as your handbook says for this size",
    french: "Manquant toléré",
  }),
  houseGoal: volume<ColdLitres>({
    label: "House goal",
    about: "average that the house asks of itself",
    unit: "mL",
    above: 0,
    example: "252 mL",
    french: "Objectif maison",
  }),
  spread: volume<ColdLitres>({
    label: "Spread",
    about: "standard deviation of the bottles, as STDEV gives it",
    unit: "mL",
    min: 0,
    example: "1.4 mL",
    french: "Dispersion",
  }),
  risk: share({
    label: "Risk",
    about: "share of bottles that may come out beyond the allowed shortfall",
    above: 0,
    max: 0.5,
    example: "0.5 %",
    french: "Risque",
  }),
  houseMargin: volume<ColdLitres>({
    label: "House margin",
    about: "how far above the declared volume the house wants its average",
    unit: "mL",
    min: 0,
    example: "2 mL",
    french: "Marge maison",
  }),
  heads: listWithBlanks(head, {
    label: "Heads",
    about: "number of the head that filled each bottle, beside its volume",
    example: "1, 2, 3, 4",
    french: "Becs",
  }),
  panelArea: number({
    label: "Panel area",
    about:
      "main panel of the label: height × width, or 40 % of height × girth of a round bottle",
    unit: "in²",
    above: 0,
    example: "6.5",
    french: "Aire du panneau",
  }),
} as const;
