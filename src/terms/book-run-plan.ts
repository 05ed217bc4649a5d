import type { HotLitres } from "../measures/quantity";
import { mass, number, share, time, volume } from "./term";

/** Rows of the Settings table that only planning a run asks for; a plan without one says what it leaves open. */
export const runPlanSettingTerms = {
  "Day length": time({
    label: "Day length",
    about: "hours of work in a day; what is beyond them is overtime",
    unit: "h",
    above: 0,
    max: 24,
    example: "8",
    french: "Durée de la journée",
  }),
  "Break after": time({
    label: "Break after",
    about: "hours of work after which the crew takes a break",
    unit: "h",
    above: 0,
    max: 24,
    example: "2.5",
    french: "Pause après",
  }),
  "Break length": time({
    label: "Break length",
    about: "how long a break lasts",
    unit: "min",
    min: 0,
    max: 240,
    example: "20",
    french: "Durée de la pause",
  }),
  Breakage: share({
    label: "Breakage",
    about: "share of the filled bottles that break or are set aside",
    below: 1,
    example: "0.5 %",
    french: "Casse",
  }),
  "Least kettle fill": volume<HotLitres>({
    label: "Least kettle fill",
    about: "hot syrup below which the kettle no longer circulates",
    unit: "gal",
    above: 0,
    example: "20",
    french: "Remplissage minimal de la cuve",
  }),
  "Empty case": mass({
    label: "Empty case",
    about: "weight of an empty case with its divider",
    unit: "g",
    min: 0,
    example: "450",
    french: "Caisse vide",
  }),
  "Empty pallet": mass({
    label: "Empty pallet",
    about: "weight of an empty pallet",
    unit: "lb",
    min: 0,
    example: "45",
    french: "Palette vide",
  }),
  "Best-by months": number({
    label: "Best-by months",
    about: "months from packing to the best-by date",
    unit: "months",
    above: 0,
    max: 120,
    whole: true,
    example: "24",
    french: "Mois de conservation",
  }),
} as const;
