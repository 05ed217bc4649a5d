import { amountInCents, roundHalfUp } from "../../measures/money";
import { withoutNoise } from "../../measures/exact";
import type { Brix, Kilograms, Money } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { poundsPerGallon } from "../syrup/density";
import { BASE_BRIX, type SaleBasis } from "./sale-amount";

/** Decimals of the figures a weight ticket prints. The buyer works the invoice out again from these, so they are billed. */
export interface Printed {
  readonly gallons: number;
  readonly poundsPerGallon: number;
  readonly kilograms: number;
}

/** Common practice, no source. */
export const usuallyPrinted: Printed = {
  gallons: 2,
  poundsPerGallon: 3,
  kilograms: 1,
};

/** What a tote is billed for: the quantity the price counts, and the money, rounded once, half up. */
export interface TicketAmount {
  readonly quantity: number;
  readonly amount: Money;
}

/** Gallons at 68 °F as the ticket prints them. */
export const printedGallons = (
  net: Kilograms,
  brix: Brix,
  printed: Printed = usuallyPrinted,
): number =>
  roundHalfUp(
    pounds(net) / roundHalfUp(poundsPerGallon(brix), printed.poundsPerGallon),
    printed.gallons,
  );

/** The amount of one ticket from what it prints; `saleAmount` gives the same from unrounded gallons and kilograms. */
export function ticketAmount(
  net: Kilograms,
  price: number,
  basis: SaleBasis,
  brix: Brix,
  printed: Printed = usuallyPrinted,
): TicketAmount {
  switch (basis) {
    case "per lb":
      return billed([pounds(net)], price);
    case "per gal":
      return billed([printedGallons(net, brix, printed)], price);
    case "per lb at 66":
      return billed([pounds(net), brix], price, BASE_BRIX);
    case "per kg":
      return billed([roundHalfUp(net, printed.kilograms)], price);
  }
}

const billed = (
  times: readonly number[],
  price: number,
  dividedBy = 1,
): TicketAmount => ({
  quantity: times.reduce((product, figure) => product * figure, 1) / dividedBy,
  amount: amountInCents([...times, price], dividedBy),
});

const pounds = (weight: Kilograms): number => withoutNoise(weight / KG_PER_LB);
