import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../measures/quantity";
import { KG_PER_LB } from "../measures/units";
import { agedPrice } from "../trade/costing/aged";
import type { Lot } from "../trade/costing/lot-cost";
import type { Book, BookRow } from "./book";
import { bulkPrice } from "./bulk-price";
import { isSameName as same, sameName } from "./keys";
import { setting } from "./setting";
import { leftInBarrel } from "./stock";
import { carriedOfRun, newestRun } from "./usual-run";
import type { SyrupSource } from "./syrup-source";

/** Whether a product's syrup kind says that it comes out of oak barrels. */
export const isAgedKind = (kind: string): boolean => sameName(kind) === "oak";

export type Emptied = BookRow<"oakBarrels"> & {
  readonly emptiedOn: DaySerial;
  readonly poundsOut: Kilograms;
};

/**
 * Aged syrup: what is left in emptied barrels, each at the price its own costs come to; and at replacement the syrup
 * that went in at its bulk price today, aged through all emptied barrels, weighted by what came out of them.
 * A barrel's price is shared by the fills it serves: the setting "Barrel fills", else the most fills the book knows.
 * Storage, interest and resale are charged where their settings are entered.
 */
export function agedSyrup(
  book: Book,
  product: BookRow<"products">,
  asOf: DaySerial,
): SyrupSource {
  const emptied = book.oakBarrels.filter(
    (barrel): barrel is Emptied =>
      barrel.emptiedOn !== undefined &&
      (barrel.poundsOut ?? 0) > 0 &&
      (lotIn(book, barrel)?.organic ?? false) === (product.organic ?? false),
  );
  const barrels = emptied.map((barrel) => {
    const lot = lotIn(book, barrel);
    const bulk = lot && bulkPrice(book, lot.grade, asOf);
    const aged = (syrup: number | undefined): MoneyPerKg | undefined =>
      syrup === undefined ? undefined : agedFor(book, barrel, syrup);
    const left = as<Kilograms>(Math.max(0, leftInBarrel(book, barrel)));
    return {
      out: barrel.poundsOut,
      asPaid: aged(barrel.syrupCostIn),
      today: aged(bulk && (barrel.poundsIn / KG_PER_LB) * bulk.pricePerPound),
      received: barrel.emptiedOn,
      left,
      needs: [
        ...(lot === undefined
          ? [`the lot that went into ${barrel.barrel}`]
          : bulk === undefined
            ? [`a bulk price for ${lot.grade}`]
            : []),
        ...(barrel.syrupCostIn === undefined && left > 0
          ? [`the syrup cost in of ${barrel.barrel}`]
          : []),
      ],
    };
  });
  const carried = carriedOfRun(book, product.product, "Brix of the newest run");
  const brix =
    newestRun(book, product.product)?.brix ??
    (carried === undefined ? undefined : as<Brix>(carried));
  return {
    lots: pricedLots(barrels.filter(({ left }) => left > 0)),
    brix,
    replacement: average(barrels),
    needs: [
      ...new Set(barrels.flatMap(({ needs }) => needs)),
      ...(barrels.length === 0 ? ["an emptied oak barrel"] : []),
      ...(brix === undefined
        ? [`a Brix, as no run of ${product.product} gives one`]
        : []),
    ],
  };
}

/** The lot a barrel was filled from: the first draw into it. */
export function lotIn(
  book: Book,
  { barrel }: BookRow<"oakBarrels">,
): BookRow<"lots"> | undefined {
  const draw = book.lotUse.find(
    ({ to }) => to !== undefined && same(to, barrel),
  );
  return draw && book.lots.find(({ lot }) => same(lot, draw.from));
}

export const agedFor = (
  book: Book,
  barrel: Emptied,
  syrup: number,
): MoneyPerKg =>
  agedPrice({
    syrup: as<Money>(syrup),
    out: barrel.poundsOut,
    barrel: barrel.cost,
    resale: setting(book, "Barrel resale") ?? as<Money>(0),
    fills:
      setting(book, "Barrel fills") ??
      book.oakBarrels.reduce((most, b) => Math.max(most, b.fillNumber), 1),
    months: ((barrel.emptiedOn - barrel.filledOn) * 12) / 365,
    storagePerMonth: setting(book, "Barrel storage") ?? as<Money>(0),
    moneyRatePerYear: setting(book, "Cost of money") ?? as<Share>(0),
  });

/** None at all while one of them has no price: what the rest cost is not what the stock cost. */
function pricedLots(
  barrels: readonly (Omit<Lot, "price"> & {
    readonly asPaid: MoneyPerKg | undefined;
  })[],
): readonly Lot[] {
  const lots = barrels.flatMap(({ received, left, asPaid }) =>
    asPaid === undefined ? [] : [{ received, left, price: asPaid }],
  );
  return lots.length === barrels.length ? lots : [];
}

function average(
  barrels: readonly {
    readonly out: Kilograms;
    readonly today: MoneyPerKg | undefined;
  }[],
): MoneyPerKg | undefined {
  let cost = 0;
  let weight = 0;
  for (const { out, today } of barrels) {
    if (today === undefined) return undefined;
    cost += out * today;
    weight += out;
  }
  return weight > 0 ? as<MoneyPerKg>(cost / weight) : undefined;
}
