import { unusable } from "../../measures/cannot-answer";
import { amountInCents } from "../../measures/money";
import type { Brix, Kilograms, Money } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { poundsPerGallon } from "../syrup/density";

/** What a price of bulk syrup is for. */
export const saleBases = [
  "per lb",
  "per gal",
  "per lb at 66",
  "per kg",
] as const;
export type SaleBasis = (typeof saleBases)[number];

/** The Brix that a price "per lb at 66" is agreed for. Common practice, no source. */
export const BASE_BRIX = 66;

/**
 * Money for a net weight at a price on this basis, rounded once, half up. Gallons are at 68 °F and never rounded on the
 * way; at 66 °Bx the price goes with the solids. Refuses (#VALUE!) a basis that needs the Brix without it.
 */
export function saleAmount(
  net: Kilograms,
  price: number,
  basis: SaleBasis,
  brix?: Brix,
): Money {
  switch (basis) {
    case "per kg":
      return amountInCents([net, price]);
    case "per lb":
      return amountInCents([net / KG_PER_LB, price]);
    case "per gal":
      return amountInCents(
        [net / KG_PER_LB, price],
        poundsPerGallon(needed(brix, basis)),
      );
    case "per lb at 66":
      return amountInCents(
        [net / KG_PER_LB, price, needed(brix, basis)],
        BASE_BRIX,
      );
  }
}

function needed(brix: Brix | undefined, basis: SaleBasis): Brix {
  if (brix !== undefined) return brix;
  throw unusable(
    `needs brix: a price "${basis}" depends on it; type the Brix of the tote at 68 °F`,
  );
}
