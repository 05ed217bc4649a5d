import { type QuoteQuestion, quoteOf, VALID_DAYS } from "../../../book/quote";
import { bulkOrBottleOf } from "../../../book/bulk-or-bottle";
import { readBook } from "../../../book/read";
import { usualRun } from "../../../book/usual-run";
import type { Change, TableContents } from "../../../hosts/host";
import { as } from "../../../measures/quantity";
import { KG_PER_LB } from "../../../measures/units";
import { cellAddress } from "../../../sheets/address";
import { bulkOrBottleSheet } from "../../../sheets/bulk-or-bottle/bulk-or-bottle-sheet";
import { quoteSheets } from "../../../sheets/quote/quote-sheets";
import type { DefinedName, Sheet } from "../../../sheets/workbook";

/** A change that adds sheets, the cell to go to then, and in plain words what will be written. */
export interface PlannedSheets {
  readonly change: Change;
  readonly sheet: string;
  readonly writes: readonly string[];
}

interface Asked {
  readonly tables: readonly TableContents[];
  readonly sheets: readonly string[];
  readonly product: string;
}

/** The customer's page and the sheet with the costs. Refuses, with a sentence, what cannot be quoted. */
export function plannedQuote({
  tables,
  sheets,
  product,
  quantities,
  leftovers,
}: Asked & Pick<QuoteQuestion, "quantities" | "leftovers">): PlannedSheets {
  const goalOn = "full";
  const { channel } = quoteOf(readBook(tables).book, {
    product,
    quantities,
    leftovers,
    goalOn,
  });
  const { page, working, names } = quoteSheets({
    contents: tables,
    product,
    quantities,
    leftovers,
    goalOn,
    channel: channel.name,
    validDays: VALID_DAYS,
    artwork: undefined,
    artworkLife: undefined,
    oneTime: undefined,
    perYear: undefined,
    forecast: undefined,
    existingSheets: sheets,
  });
  return planned("the quote", [page, working], names);
}

/** Pounds of syrup the sheet starts with. */
const FREE_POUNDS = 5000;

/** What the next pounds earn in bulk and in bottles. */
export function plannedBulkOrBottle({
  tables,
  sheets,
  product,
}: Asked): PlannedSheets {
  const { book } = readBook(tables);
  const bottles = usualRun(book, product);
  const { contract } = bulkOrBottleOf(book, {
    product,
    bottles,
    syrup: as(FREE_POUNDS * KG_PER_LB),
    labour: undefined,
  });
  const { sheet, names } = bulkOrBottleSheet({
    contents: tables,
    product,
    bottles,
    pounds: FREE_POUNDS,
    labour: undefined,
    tote: contract && {
      perPound: contract.perPound,
      says: `the best open tote contract, ${contract.contract}`,
    },
    existingSheets: sheets,
  });
  return planned("the comparison with bulk", [sheet], names);
}

function planned(
  says: string,
  added: readonly [Sheet, ...Sheet[]],
  names: readonly DefinedName[],
): PlannedSheets {
  return {
    sheet: added[0].name,
    change: { says, append: [], addSheets: added, names },
    writes: [
      ...added.map((sheet) => `the sheet “${sheet.name}”, ${cellsOf(sheet)}`),
      `${names.length} names for the figures`,
    ],
  };
}

const cellsOf = ({ cells }: Sheet): string =>
  `A1 to ${cellAddress(
    cells.reduce((last, { row }) => Math.max(last, row), 0),
    cells.reduce((last, { column }) => Math.max(last, column), 0),
  )}`;
