import type { Kilograms } from "./quantity";
import { KG_PER_LB } from "./units";

/** "10,251" or "14.4": a weight as the office writes it in pounds. */
export const poundsText = (
  weight: Kilograms,
  locale: "en-US" | "fr-CA" = "en-US",
): string =>
  (weight / KG_PER_LB).toLocaleString(locale, { maximumFractionDigits: 2 });
