import type { Brix } from "../measures/quantity";
import {
  freightPerPound,
  priceBothWays,
  type PriceBothWays,
} from "../trade/totes/delivered-price";
import { pricePerPound } from "../trade/totes/price-per-pound";
import type { Book, BookRow } from "./book";
import { contractPrice } from "./contract-price";
import { priceBases } from "./price-bases";

/** A contract's price a pound at our dock and delivered, in its own money; what is not entered is named, never zero. */
export interface ContractFreight {
  /** What a pound is sold for, at the Brix of what was shipped, else the least agreed. */
  readonly perPound: number | undefined;
  readonly perPoundFreight: number | undefined;
  readonly bothWays: PriceBothWays | undefined;
  readonly needs: readonly string[];
}

/** Puts the contract's price on both footings. */
export function contractFreight(
  book: Pick<Book, "settings">,
  row: BookRow<"toteContracts">,
  meanBrix: Brix | undefined,
): ContractFreight {
  const brix = meanBrix ?? row.minimumBrix;
  const { basis } = priceBases[row.basis];
  const needsBrix = basis === "per gal" || basis === "per lb at 66";
  const { price } = contractPrice(book, row);
  const perPound =
    price === undefined || (needsBrix && brix === undefined)
      ? undefined
      : pricePerPound(price, basis, brix ?? (0 as Brix));
  const perPoundFreight =
    row.freight === undefined || row.loadWeight === undefined
      ? undefined
      : freightPerPound(row.freight, row.loadWeight);
  return {
    perPound,
    perPoundFreight,
    bothWays:
      perPound === undefined ||
      perPoundFreight === undefined ||
      row.delivery === undefined
        ? undefined
        : priceBothWays(perPound, row.delivery, perPoundFreight),
    needs: [
      ...(row.freight === undefined ? ["freight not entered"] : []),
      ...(row.freight !== undefined && row.loadWeight === undefined
        ? ["pounds of a load not entered"]
        : []),
      ...(row.delivery === undefined ? ["dock or delivered not entered"] : []),
      ...(perPound === undefined
        ? [
            price === undefined
              ? "which gallon its price is for"
              : "a Brix for its price",
          ]
        : []),
    ],
  };
}
