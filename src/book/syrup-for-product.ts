import {
  as,
  type Brix,
  type DaySerial,
  type Money,
  type MoneyPerKg,
} from "../measures/quantity";
import { KG_PER_LB } from "../measures/units";
import { landedPrice } from "../trade/costing/landed";
import type { Lot } from "../trade/costing/lot-cost";
import { agedSyrup, isAgedKind } from "./aged-syrup";
import type { Book, BookRow } from "./book";
import { bulkPrice } from "./bulk-price";
import { isSameName as same } from "./keys";
import { leftOfLot } from "./stock";
import type { SyrupSource } from "./syrup-source";

/** The lots of the product's kind and organic status, or the emptied barrels for a product of aged syrup. */
export const syrupFor = (
  book: Book,
  product: BookRow<"products">,
  asOf: DaySerial,
): SyrupSource =>
  isAgedKind(product.syrupKind) && book.oakBarrels.length > 0
    ? agedSyrup(book, product, asOf)
    : bulkSyrup(book, product, asOf);

function bulkSyrup(
  book: Book,
  product: BookRow<"products">,
  asOf: DaySerial,
): SyrupSource {
  const lots = suitableLots(book, product);
  const brix = weightedBrix(lots);
  const priced = bulkPrice(book, product.syrupKind, asOf);
  return {
    lots,
    brix,
    replacement: priced && as<MoneyPerKg>(priced.pricePerPound / KG_PER_LB),
    needs: [
      ...(priced === undefined
        ? [`a bulk price for ${product.syrupKind}`]
        : []),
      ...(brix === undefined
        ? [`a Brix, as no ${product.syrupKind} lot is in stock`]
        : []),
    ],
  };
}

interface SuitableLot extends Lot {
  readonly brix: Brix;
}

/** Lots of the product's kind and organic status with something left. */
const suitableLots = (
  book: Book,
  product: BookRow<"products">,
): readonly SuitableLot[] =>
  book.lots
    .filter(
      (lot) =>
        same(lot.grade, product.syrupKind) &&
        (lot.organic ?? false) === (product.organic ?? false),
    )
    .map((lot) => ({
      received: lot.received,
      left: leftOfLot(book, lot),
      brix: lot.brix,
      price: landedPrice({
        net: lot.net,
        syrup: as<Money>((lot.net / KG_PER_LB) * lot.pricePerPound),
        freight: lot.inboundFreight ?? as<Money>(0),
        tests: as<Money>(0),
      }),
    }))
    .filter((lot) => lot.left > 0);

function weightedBrix(lots: readonly SuitableLot[]): Brix | undefined {
  const weight = lots.reduce((sum, lot) => sum + lot.left, 0);
  return weight > 0
    ? as<Brix>(lots.reduce((sum, lot) => sum + lot.left * lot.brix, 0) / weight)
    : undefined;
}
