import { usGallonsEach, WHICH_GALLON } from "../measures/gallon";
import type { Book, BookRow } from "./book";
import { gallonOf, NAME_THE_GALLON } from "./gallon";
import { priceBases } from "./price-bases";

/** A contract's price as the trade's sums want it: one for a gallon is for the US gallon there. */
export interface ContractPrice {
  readonly price: number | undefined;
  /** US gallons in one of the gallons the price is for. */
  readonly gallonsEach?: number;
  /** What must be entered before the price can be used. */
  readonly needs?: string;
}

/** The price of a contract; one for a gallon is no price until the book says which gallon it means. */
export function contractPrice(
  book: Pick<Book, "settings">,
  { basis, price }: Pick<BookRow<"toteContracts">, "basis" | "price">,
): ContractPrice {
  if (priceBases[basis].basis !== "per gal") return { price };
  const each = usGallonsEach(gallonOf(book));
  return each === undefined
    ? {
        price: undefined,
        needs: `which gallon its price is for, as these ${WHICH_GALLON}: ${NAME_THE_GALLON}`,
      }
    : { price: price / each, gallonsEach: each };
}
