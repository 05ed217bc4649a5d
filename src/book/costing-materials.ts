import { LITRES_PER_GALLON } from "../measures/units";
import { wholeUp } from "../measures/whole-up";
import type { Material } from "../trade/costing/material-cost";
import type { Book, BookRow } from "./book";
import { isSameName as same } from "./keys";

/** The parts a run of a product needs, and the names of those that Parts does not hold. */
export function materialsOf(
  book: Book,
  product: BookRow<"products">,
  bottles: number,
): {
  readonly known: readonly Material[];
  readonly unknown: readonly string[];
} {
  const rows = book.productMaterials.filter((m) =>
    same(m.product, product.product),
  );
  const cases = wholeUp(bottles / product.bottlesPerCase);
  const counts: Readonly<Record<BookRow<"productMaterials">["per"], number>> = {
    bottle: bottles,
    case: cases,
    pallet: wholeUp(cases / (product.casesPerLayer * product.layersPerPallet)),
    "US gallon of syrup": (bottles * product.fill) / LITRES_PER_GALLON,
  };
  const found = rows.map((row) => ({
    row,
    part: book.parts.find((p) => same(p.part, row.part)),
  }));
  return {
    unknown: found.filter(({ part }) => !part).map(({ row }) => row.part),
    known: found.flatMap(({ row, part }) =>
      part
        ? {
            part: part.part,
            needed: row.quantity * counts[row.per],
            spoilage: part.spoilage,
            carton: Math.max(1, part.piecesPerCarton),
            minimumOrder: part.minimumOrder,
            bought: part.bought,
            freight: part.freightPerOrder,
            breaks: book.partPrices
              .filter((p) => same(p.part, part.part))
              .map((p) => ({ from: p.fromQuantity, price: p.priceEach })),
          }
        : [],
    ),
  };
}
