import type { CellPlace, Host } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import {
  type CopyChange,
  sameValue,
} from "../../../sheets/compare/compare-workbooks";
import { costingNames, type NamedPlace } from "../../../sheets/costing/names";
import { priceListNames } from "../../../sheets/prices/names";
import { quoteNames } from "../../../sheets/quote/names";
import type { LaidOut } from "../../../sheets/returned/sheet-behind";
import { type Verdict, verdictsOn } from "../../../sheets/returned/verdicts";
import type { CellValue, Stored, Workbook } from "../../../sheets/workbook";
import type { OpenBook } from "../open-book";

/** What a person can do about a change: take it over into a cell of the open book, or read why not. */
export type Offer =
  | {
      readonly can: "take over";
      readonly place: CellPlace;
      /** "Prices, C12: Price" */
      readonly where: string;
      readonly holds: Stored;
      readonly value: CellValue;
      readonly isMoved: boolean;
      /** The book holds it already. */
      readonly isDone: boolean;
    }
  | { readonly can: "nothing"; readonly why: string };

/** One offer for each change, in their order, from the book as it now stands. */
export async function offersFor(
  host: Pick<Host, "readArea" | "readCell">,
  book: Pick<OpenBook, "tables" | "names">,
  changes: readonly CopyChange[],
  sent: Workbook,
): Promise<readonly Offer[]> {
  const verdicts = verdictsOn(changes, sent, book.tables);
  return Promise.all(
    verdicts.map(async (verdict): Promise<Offer> => {
      if (verdict.can === "nothing") return verdict;
      const found =
        verdict.can === "look for"
          ? await inputCell(host, book, verdict)
          : {
              place: placeOf(verdict),
              words: verdict.heading,
              isMoved: verdict.isMoved,
            };
      if ("why" in found) return { can: "nothing", why: found.why };
      return offerAt(host, found, verdict.value);
    }),
  );
}

const placeOf = ({ sheet, row, column }: CellPlace): CellPlace => ({
  sheet,
  row,
  column,
});

async function offerAt(
  host: Pick<Host, "readCell">,
  {
    place,
    words,
    isMoved,
  }: {
    readonly place: CellPlace;
    readonly words: string;
    readonly isMoved: boolean;
  },
  value: CellValue,
): Promise<Offer> {
  const { formula, value: holds } = await host.readCell(place);
  const where = `${place.sheet}, ${cellAddress(place.row, place.column)}: ${words}`;
  if (formula !== undefined)
    return {
      can: "nothing",
      why: `the book's own cell (${where}) holds a formula, and a figure would replace it; type it there yourself if you want that`,
    };
  const isDone = sameValue(holds, value);
  return { can: "take over", place, where, holds, value, isMoved, isDone };
}

/** Inputs stand near the top of their sheet. */
const ROWS = 60;

/** An input's cell on a sheet of the open book, by its label: rows may have been put in above it. */
async function inputCell(
  host: Pick<Host, "readArea">,
  { names }: Pick<OpenBook, "names">,
  { behind, label }: Extract<Verdict, { readonly can: "look for" }>,
): Promise<
  | {
      readonly place: CellPlace;
      readonly words: string;
      readonly isMoved: false;
    }
  | { readonly why: string }
> {
  const { known, words } = sheetOf(behind, names);
  if (!known)
    return {
      why: `it is typed on ${words}, which this workbook does not have; build it first`,
    };
  const { sheet, column } = known;
  const left = Math.max(0, column - 1);
  const rows = await host.readArea(sheet, 0, left, ROWS, 1);
  const row = rows.findIndex(([text]) => text === label);
  return row < 0
    ? { why: `${words} has no row "${label}" any more` }
    : { place: { sheet, row, column }, words: label, isMoved: false };
}

function sheetOf(
  behind: LaidOut,
  names: OpenBook["names"],
): { readonly known: NamedPlace | undefined; readonly words: string } {
  switch (behind.kind) {
    case "costing":
      return {
        known: costingNames(names, behind.product).bottles,
        words: `the costing sheet of ${behind.product}`,
      };
    case "quote":
      return {
        known: quoteNames(names, behind.product).quantities,
        words: `the quote's own sheet for ${behind.product}`,
      };
    case "prices":
      return { known: priceListNames(names).as_of, words: "the price list" };
  }
}
