import type { Contents } from "../../book/contents";
import { inBooksGallon } from "../books-gallon";
import type { SheetDescription } from "../model";
import { place, type PlacedSheet } from "../place";
import { refuseExisting, referenceTo } from "../prices/price-list-sheets";
import type { DefinedName, Sheet } from "../workbook";
import { costingParts } from "./costing-parts";
import { describePage } from "./customer-page";
import { quoteInputsBlock, type QuoteInputs } from "./input-blocks";
import {
  type QuoteKey,
  quoteKeys,
  quoteName,
  quotePage,
  quoteWorking,
} from "./names";
import { placedReference } from "./placed-area";
import { channelBlock, quoteChecksBlock, tiersBlock } from "./result-blocks";
import { inTier } from "./tier-blocks";

export interface QuoteSheetsQuestion extends QuoteInputs {
  /** The book's tables as they stand. */
  readonly contents: readonly Contents[];
  readonly product: string;
  readonly existingSheets: readonly string[];
  /** Another day than the newest of the book. */
  readonly asOf?: number | undefined;
  /** Only plain worksheet functions: opens anywhere. */
  readonly portable?: boolean;
}

/**
 * A quote as two sheets: one page for the customer, and the sheet for us that it is worked out on, with a whole costing for
 * each quantity. Refuses (#VALUE!) a product that is not in Products and sheets that exist.
 */
export function quoteSheets(question: QuoteSheetsQuestion): {
  readonly page: Sheet;
  readonly working: Sheet;
  /** The page with its places, for a copy that leaves the house. */
  readonly placed: PlacedSheet;
  readonly names: readonly DefinedName[];
} {
  const { product, existingSheets, quantities, portable = false } = question;
  const pageName = quotePage(product);
  const workingName = quoteWorking(product);
  for (const name of [pageName, workingName])
    refuseExisting(existingSheets, name);
  const working = place(
    inBooksGallon(describeWorking(question, workingName), question.contents),
    { portable },
  );
  const page = place(
    describePage(
      pageName,
      product,
      quantities.length,
      referenceTo(workingName, working),
    ),
    { portable },
  );
  return {
    page: page.sheet,
    working: working.sheet,
    placed: page,
    names: quoteKeys.map((key) => ({
      name: quoteName(product, key),
      refersTo:
        key === "offer"
          ? placedReference(pageName, page, key)
          : placedReference(
              workingName,
              working,
              ...sourceOf(key, quantities.length),
            ),
    })),
  };
}

function describeWorking(
  question: QuoteSheetsQuestion,
  name: string,
): SheetDescription {
  const { contents, product, quantities, asOf } = question;
  const parts = costingParts(contents, product, asOf);
  return {
    name,
    tabColor: "#b06a2c",
    widths: [
      42, 18, 18, 18, 18, 18, 18, 14, 14, 16, 14, 14, 14, 14, 14, 12, 40,
    ],
    frozenRows: 1,
    print: {
      paper: "letter",
      landscape: true,
      fit: "one page wide",
      across: 2,
      headings: { first: 0, rows: 1 },
      foot: `Costs behind the quote for ${product}: not for the customer`,
    },
    blocks: [
      {
        kind: "title",
        content: {
          formula:
            '="Costs behind the quote: "&{description}&" ("&{product}&")"',
        },
      },
      {
        kind: "notes",
        lines: [
          "For us only: the customer gets the other sheet. Yellow cells are yours to change; both sheets follow.",
        ],
      },
      quoteInputsBlock(question, parts),
      tiersBlock(quantities.length),
      channelBlock,
      quoteChecksBlock(quantities.length, parts),
      ...parts.once,
      ...quantities.flatMap((_, i) => parts.tier(i + 1, `Quantity ${i + 1}: `)),
    ],
  };
}

/** The first and last placed cell that a public name stands for. */
function sourceOf(
  key: QuoteKey,
  count: number,
): readonly [first: string, last: string] {
  switch (key) {
    case "quantities":
      return [inTier(1, "bottles"), inTier(count, "bottles")];
    case "checks":
      return ["missing.label", "long_enough"];
    default:
      return [key, key];
  }
}
