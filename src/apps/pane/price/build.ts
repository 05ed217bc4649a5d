import type { Change, TableContents } from "../../../hosts/host";
import { costingSheet } from "../../../sheets/costing/costing-sheet";
import { cellAddress } from "../../../sheets/address";

/** A change that adds a product's costing sheet, and in plain words what it will write. */
export interface PlannedSheet {
  readonly change: Change;
  readonly sheet: string;
  readonly writes: readonly string[];
}

export function plannedSheet(facts: {
  readonly tables: readonly TableContents[];
  readonly product: string;
  readonly bottles: number;
  readonly sheets: readonly string[];
}): PlannedSheet {
  const { sheet, names } = costingSheet({
    contents: facts.tables,
    product: facts.product,
    bottles: facts.bottles,
    existingSheets: facts.sheets,
  });
  const lastRow = Math.max(0, ...sheet.cells.map((c) => c.row));
  const lastColumn = Math.max(0, ...sheet.cells.map((c) => c.column));
  return {
    sheet: sheet.name,
    change: {
      says: `the sheet “${sheet.name}”`,
      append: [],
      addSheets: [sheet],
      names,
    },
    writes: [
      `one new sheet, “${sheet.name}”, cells A1 to ${cellAddress(lastRow, lastColumn)}`,
      `${names.length} names for its figures`,
    ],
  };
}
