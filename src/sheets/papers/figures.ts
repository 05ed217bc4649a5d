import type { SourceLot } from "../../book/source-lots";
import { poundsText } from "../../measures/pounds-text";
import type { Kilograms } from "../../measures/quantity";
import type { Say } from "../words/say";

/** Weights, volumes and lots as a paper writes them. */
export interface PaperFigures {
  readonly lb: (weight: Kilograms) => string;
  /** To a tenth, as scales with kilograms print tote weights. */
  readonly kg: (weight: Kilograms) => string;
  readonly brix: (brix: number) => string;
  readonly gallons: (gallons: number | undefined) => string;
  /** "26-04 1,913 lb, 26-05 999 lb". */
  readonly lots: (lots: readonly SourceLot[]) => string;
}

export function figuresIn({ words, locale }: Say): PaperFigures {
  const to = (value: number, decimals: number): string =>
    value.toLocaleString(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
    });
  const lb = (weight: Kilograms): string => `${poundsText(weight, locale)} lb`;
  return {
    lb,
    kg: (weight) => `${to(weight, 1)} kg`,
    brix: (brix) => `${to(brix, 1)} °Bx`,
    gallons: (gallons) =>
      gallons === undefined
        ? words("not known")
        : words(`${to(gallons, 2)} gal`),
    lots: (lots) =>
      lots.length === 0
        ? words("not recorded")
        : lots
            .map(({ lot, weight }) =>
              weight === undefined ? lot : words(`${lot} ${lb(weight)}`),
            )
            .join(", "),
  };
}
