import type { SourceLot } from "../../book/source-lots";
import type { Kilograms } from "../../measures/quantity";
import { poundsText } from "../../measures/pounds-text";

export const lb = (weight: Kilograms): string => `${poundsText(weight)} lb`;

/** To a tenth, as scales with kilograms print tote weights. */
export const kg = (weight: Kilograms): string =>
  `${weight.toLocaleString("en-US", { minimumFractionDigits: 1, maximumFractionDigits: 1 })} kg`;

export const gallonsText = (gallons: number | undefined): string =>
  gallons === undefined
    ? "not known"
    : `${gallons.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 })} gal`;

/** "26-04 1,913 lb, 26-05 999 lb". */
export const lotsText = (lots: readonly SourceLot[]): string =>
  lots.length === 0
    ? "not recorded"
    : lots
        .map(({ lot, weight }) =>
          weight === undefined ? lot : `${lot} ${lb(weight)}`,
        )
        .join(", ");
