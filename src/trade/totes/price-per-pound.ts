import type { Brix } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { poundsPerGallon } from "../syrup/density";
import { BASE_BRIX, type SaleBasis } from "./sale-amount";

/** What a price on any basis comes to for a pound at this Brix, unrounded and in the price's own money. */
export function pricePerPound(
  price: number,
  basis: SaleBasis,
  brix: Brix,
): number {
  switch (basis) {
    case "per lb":
      return price;
    case "per kg":
      return price * KG_PER_LB;
    case "per gal":
      return price / poundsPerGallon(brix);
    case "per lb at 66":
      return (price * brix) / BASE_BRIX;
  }
}
