import type { Contents } from "../../book/contents";
import { CannotAnswer } from "../../measures/cannot-answer";
import { bookColumn } from "../book-cells";
import { costingSheet, costingSheetName } from "../costing/costing-sheet";
import { FIGURES_SHEET } from "../handover/cut-tables";
import { liveSheets } from "../handover/asked-sheets";
import type { SheetDescription } from "../model";
import { PRICE_LIST } from "../prices/names";
import { quotePage } from "../quote/names";
import { toteSheetNames } from "../totes/names";
import { isSheetSaid } from "./spoken";

/** A sheet of the farm as it is laid out. */
export type LaidOut =
  | {
      readonly kind: "costing";
      readonly product: string;
      readonly description: SheetDescription;
    }
  | {
      readonly kind: "quote";
      readonly product: string;
      readonly description: SheetDescription;
    }
  | { readonly kind: "prices"; readonly description: SheetDescription };

/** What a sheet of a copy was made of. */
export type SheetBehind =
  LaidOut | { readonly kind: "totes" } | { readonly kind: "figures" };

/** Only how many quantities there are decides where a quote's figures stand. */
const QUANTITIES = Array.from({ length: 9 }, (_, i) => i + 1);

/** What a sheet of a copy was made of, by its name and the open book; a sentence where the book has nothing like it. */
export function sheetBehind(
  name: string,
  contents: readonly Contents[],
): SheetBehind | { readonly why: string } {
  const isNamed = (other: string): boolean => isSheetSaid(other, name);
  if (isNamed(FIGURES_SHEET)) return { kind: "figures" };
  if (isNamed(toteSheetNames.statement)) return { kind: "totes" };
  try {
    if (isNamed(PRICE_LIST))
      return { kind: "prices", description: laidOut(contents, "prices") };
    for (const product of productsIn(contents)) {
      if (isNamed(costingSheetName(product)))
        return {
          kind: "costing",
          product,
          description: costingSheet({
            contents,
            product,
            bottles: 1,
            existingSheets: [],
          }).placed.description,
        };
      if (isNamed(quotePage(product)))
        return {
          kind: "quote",
          product,
          description: laidOut(contents, "quote", product),
        };
    }
  } catch (problem) {
    if (!(problem instanceof CannotAnswer)) throw problem;
    return { why: problem.message };
  }
  return {
    why: `the open book has no product or list that the sheet "${name}" could be of`,
  };
}

function laidOut(
  contents: readonly Contents[],
  kind: "prices" | "quote",
  of?: string,
): SheetDescription {
  const { sheets } = liveSheets(
    contents,
    [{ kind, ...(of === undefined ? {} : { of }) }],
    { bottles: QUANTITIES },
  );
  const [sheet] = sheets;
  if (!sheet) throw new Error(`No sheet was laid out for ${kind}`);
  return sheet.placed.description;
}

const productsIn = (contents: readonly Contents[]): readonly string[] =>
  bookColumn(contents, "products", "product").flatMap((cell) =>
    typeof cell === "string" && cell.trim() !== "" ? [cell.trim()] : [],
  );
