import { inPounds } from "../functions/by-weight";
import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
  type Money,
} from "../measures/quantity";
import { KG_PER_LB } from "../measures/units";
import { contractLeft } from "../trade/totes/balance";
import { saleAmount } from "../trade/totes/sale-amount";
import type { Book, BookRow } from "./book";
import { worthIn } from "./exchange-rate";
import { contractPrice } from "./contract-price";
import { isSameName, sameName } from "./keys";
import { priceBases } from "./price-bases";

/** What a pound brings in totes, and under which contract. */
export interface TotePrice {
  readonly contract: string;
  /** In the books' money. */
  readonly perPound: Money;
}

/**
 * The best price a pound of this syrup brings under a contract that is open on the day, takes the grade and still has
 * weight left. A price in other money counts at the rate of the day; without a rate it is left out.
 */
export function bestTotePrice(
  book: Book,
  grade: string,
  brix: Brix,
  asOf: DaySerial,
): TotePrice | undefined {
  return book.toteContracts
    .filter(
      (row) =>
        row.start <= asOf &&
        asOf <= row.end &&
        takes(row, grade) &&
        weightLeft(book, row, asOf) > 0,
    )
    .flatMap((row): readonly TotePrice[] => {
      const perPound = inBooksMoney(book, row, brix, asOf);
      return perPound === undefined
        ? []
        : [{ contract: row.contract, perPound }];
    })
    .reduce<TotePrice | undefined>(
      (best, one) => (best && best.perPound >= one.perPound ? best : one),
      undefined,
    );
}

const takes = (row: BookRow<"toteContracts">, grade: string): boolean =>
  row.gradesAllowed === undefined ||
  row.gradesAllowed.split("|").map(sameName).includes(sameName(grade));

const weightLeft = (
  book: Book,
  row: BookRow<"toteContracts">,
  asOf: DaySerial,
): Kilograms =>
  contractLeft(
    row.weight,
    book.toteShipments
      .filter(
        (tote) =>
          tote.shipped <= asOf && isSameName(tote.contract, row.contract),
      )
      .map(({ net }) => net),
  );

/** Of a thousand pounds, so that the cent it is rounded to does not show. */
const MANY = as<Kilograms>(1000 * KG_PER_LB);

function inBooksMoney(
  book: Book,
  row: BookRow<"toteContracts">,
  brix: Brix,
  asOf: DaySerial,
): Money | undefined {
  const { currency, basis } = priceBases[row.basis];
  const { price } = contractPrice(book, row);
  if (price === undefined) return undefined;
  const perPound = saleAmount(MANY, price, basis, brix) / inPounds(MANY);
  const worth = worthIn(book)(currency, asOf);
  return worth === undefined ? undefined : as<Money>(perPound * worth);
}
