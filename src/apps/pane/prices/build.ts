import type { Change, TableContents } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import { priceListSheets } from "../../../sheets/prices/price-list-sheets";
import { whatIfSheet } from "../../../sheets/what-if/what-if-sheet";
import type { Sheet } from "../../../sheets/workbook";

/** A change that adds the price list with its working and the what-if sheet, and in plain words what it will write. */
export interface PlannedPrices {
  readonly change: Change;
  readonly sheet: string;
  readonly writes: readonly string[];
}

/** Refuses, with a sentence, a workbook that lacks a table or has such a sheet. */
export function plannedPrices(facts: {
  readonly tables: readonly TableContents[];
  readonly sheets: readonly string[];
}): PlannedPrices {
  const prices = priceListSheets({
    contents: facts.tables,
    existingSheets: facts.sheets,
  });
  const whatIf = whatIfSheet(prices, { existingSheets: facts.sheets });
  const added = [prices.list, whatIf.sheet, prices.working];
  const names = [...prices.names, ...whatIf.names];
  return {
    sheet: prices.list.name,
    change: {
      says: "the price list and its what-if sheet",
      append: [],
      addSheets: added,
      names,
    },
    writes: [
      ...added.map((sheet) => `the sheet “${sheet.name}”, ${cellsOf(sheet)}`),
      `${names.length} names for their figures`,
    ],
  };
}

const cellsOf = ({ cells }: Sheet): string =>
  `A1 to ${cellAddress(
    cells.reduce((last, { row }) => Math.max(last, row), 0),
    cells.reduce((last, { column }) => Math.max(last, column), 0),
  )}`;
