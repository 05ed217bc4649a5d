import { unanswerable } from "../../measures/cannot-answer";
import { inOrderOfDays } from "../../measures/in-order-of-days";
import {
  as,
  type DaySerial,
  type Kilograms,
  type Money,
  type MoneyPerKg,
} from "../../measures/quantity";
import { poundsText } from "../../measures/pounds-text";

export type LotMethod = "oldest first" | "average" | "replacement";

export interface Lot {
  readonly received: DaySerial;
  readonly left: Kilograms;
  readonly price: MoneyPerKg;
}

/** A weight taken at one price. */
export interface Draw {
  readonly weight: Kilograms;
  readonly price: MoneyPerKg;
}

/** What a weight of syrup costs from these lots by one of three methods. */
export const lotCost = (
  method: LotMethod,
  weight: Kilograms,
  lots: readonly Lot[],
  asOf?: DaySerial,
): Money =>
  as<Money>(
    lotDraws(method, weight, lots, asOf).reduce(
      (sum, draw) => sum + draw.weight * draw.price,
      0,
    ),
  );

/**
 * The same, price by price. A lot received after the day asked about is not there yet.
 * More than in stock has no answer (#N/A), except at replacement, which prices syrup still to be bought.
 */
export function lotDraws(
  method: LotMethod,
  weight: Kilograms,
  lots: readonly Lot[],
  asOf?: DaySerial,
): readonly Draw[] {
  const known = lots.filter((l) => asOf === undefined || l.received <= asOf);
  switch (method) {
    case "replacement":
      return [{ weight, price: newestPrice(known) }];
    case "average":
      return averageDraw(weight, known);
    case "oldest first":
      return oldestFirst(weight, known);
  }
}

/** The price of the newest lot, used up or not: what the next pound would cost. Of lots of one day, the last row. */
function newestPrice(lots: readonly Lot[]): MoneyPerKg {
  const newest = lots.reduce<Lot | undefined>(
    (best, lot) => (best && best.received > lot.received ? best : lot),
    undefined,
  );
  if (!newest)
    throw unanswerable("no lot had been received by that day, so no price");
  return newest.price;
}

function averageDraw(weight: Kilograms, lots: readonly Lot[]): readonly Draw[] {
  const stock = inStock(lots);
  needs(weight, stock);
  if (weight === 0) return [];
  const money = lots.reduce((sum, l) => sum + l.left * l.price, 0);
  return [{ weight, price: as<MoneyPerKg>(money / stock) }];
}

function oldestFirst(weight: Kilograms, lots: readonly Lot[]): readonly Draw[] {
  needs(weight, inStock(lots));
  const draws: Draw[] = [];
  let open = weight;
  for (const lot of inOrderOfDays(lots, ({ received }) => received)) {
    if (open <= 0) break;
    if (lot.left <= 0) continue;
    const taken = as<Kilograms>(Math.min(open, lot.left));
    draws.push({ weight: taken, price: lot.price });
    open = as<Kilograms>(open - taken);
  }
  return draws;
}

const inStock = (lots: readonly Lot[]): Kilograms =>
  as<Kilograms>(lots.reduce((sum, l) => sum + l.left, 0));

function needs(weight: Kilograms, stock: Kilograms): void {
  const short = weight - stock;
  // The last bits of a sum of pounds must not make a full draw short.
  if (short > weight * 1e-12)
    throw unanswerable(`short by ${poundsText(as<Kilograms>(short))} lb`);
}
