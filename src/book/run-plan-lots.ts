import type { SuitableLot } from "../trade/costing/lot-draw";
import { isAgedKind, lotIn } from "./aged-syrup";
import type { Book, BookRow } from "./book";
import { isSameName as same } from "./keys";
import { leftInBarrel, leftOfLot } from "./stock";

/** The lots, or for aged syrup the emptied barrels, of a product's kind and organic status, in the order of their rows. */
export function lotsFor(
  book: Book,
  product: BookRow<"products">,
): readonly SuitableLot[] {
  const organic = product.organic ?? false;
  if (isAgedKind(product.syrupKind) && book.oakBarrels.length > 0)
    return book.oakBarrels.flatMap((barrel) =>
      barrel.emptiedOn !== undefined &&
      (barrel.poundsOut ?? 0) > 0 &&
      (lotIn(book, barrel)?.organic ?? false) === organic
        ? [
            {
              lot: barrel.barrel,
              received: barrel.emptiedOn,
              left: leftInBarrel(book, barrel),
            },
          ]
        : [],
    );
  return book.lots
    .filter(
      (lot) =>
        same(lot.grade, product.syrupKind) &&
        (lot.organic ?? false) === organic,
    )
    .map((lot) => ({
      lot: lot.lot,
      received: lot.received,
      left: leftOfLot(book, lot),
    }));
}
