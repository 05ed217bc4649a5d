import { unusable } from "../measures/cannot-answer";
import type { DaySerial } from "../measures/quantity";
import { lotCode } from "../trade/codes/lot-code";
import { type LabelFact, labelFacts } from "../trade/contents/label-facts";
import type { Book, BookRow } from "./book";
import { isSameName } from "./keys";
import { lineLetters, USUAL_PATTERN } from "./run-plan-code";
import { setting } from "./setting";

export interface LabelAsked {
  readonly product: string;
  /** Principal display surface in cm². */
  readonly surface?: number | undefined;
  readonly isProductOfCanada?: boolean | undefined;
  readonly packedOn?: DaySerial | undefined;
}

export interface ProductLabel {
  readonly product: BookRow<"products">;
  readonly facts: readonly LabelFact[];
}

/** Names of the colour classes as the book writes its kinds of syrup. */
const CLASSES = ["Golden", "Amber", "Dark", "Very Dark"] as const;

/** What a Canadian label of a product has to say. Refuses (#VALUE!) a product that is not in the book. */
export function productLabel(book: Book, asked: LabelAsked): ProductLabel {
  const product = book.products.find((row) =>
    isSameName(row.product, asked.product),
  );
  if (!product)
    throw unusable(
      `There is no product "${asked.product}" in Products, which has ${book.products.map((row) => row.product).join(", ")}`,
    );
  const { declared, declaredText, fill, syrupKind, usualLine } = product;
  return {
    product,
    facts: labelFacts({
      declared,
      declaredText,
      fill,
      colorClass: CLASSES.find((name) => isSameName(name, syrupKind)),
      surface: asked.surface,
      isProductOfCanada: asked.isProductOfCanada,
      lotCode:
        asked.packedOn === undefined
          ? undefined
          : lotCode(
              asked.packedOn,
              usualLine === undefined ? "" : lineLetters(usualLine),
              setting(book, "Lot code pattern") ?? USUAL_PATTERN,
            ),
      packer: setting(book, "Farm"),
    }),
  };
}
