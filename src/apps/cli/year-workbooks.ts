import type { ChannelsQuestion } from "../../book/channel-orders";
import type { Contents } from "../../book/contents";
import type { OverheadsQuestion } from "../../book/overheads-answer";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { channelsSheet } from "../../sheets/channels/channels-sheet";
import { costingSheet } from "../../sheets/costing/costing-sheet";
import { farmBook } from "../../sheets/farm-book";
import { overheadsSheet } from "../../sheets/overheads/overheads-sheet";
import { portable } from "../../sheets/portable";
import type { DefinedName, Sheet, Workbook } from "../../sheets/workbook";
import { yearsSheet } from "../../sheets/year-to-year/years-sheet";
import { gridFunctions } from "../grid-functions";

interface Built {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
}

/** A farm book with its overheads by driver; formulas without results yet. `plain` holds none of our functions. */
export const overheadsBook = (
  contents: readonly Contents[],
  question: OverheadsQuestion = {},
  plain = false,
): Workbook =>
  withBook(
    contents,
    [
      overheadsSheet({
        contents,
        existingSheets: [],
        portable: plain,
        ...question,
      }),
    ],
    plain,
  );

/** A farm book with a product's costing and its channels. */
export function channelsBook(
  contents: readonly Contents[],
  question: ChannelsQuestion & { readonly bottles: number },
  plain = false,
): Workbook {
  const { product, bottles, asOf, ...asked } = question;
  const built = costingSheet({
    contents,
    product,
    bottles,
    existingSheets: [],
    portable: plain,
  });
  const costing = { ...built, sheet: onDay(built.sheet, asOf) };
  const channels = channelsSheet({
    contents,
    product,
    names: costing.names,
    existingSheets: [],
    portable: plain,
    ...asked,
  });
  return withBook(contents, [channels, costing], plain);
}

/** A costing whose day is typed in. */
function onDay(sheet: Sheet, asOf: number | undefined): Sheet {
  const label = sheet.cells.find(({ value }) => value === "Prices as of");
  if (asOf === undefined || !label) return sheet;
  return {
    ...sheet,
    cells: sheet.cells.map(({ formula, ...cell }) =>
      cell.row === label.row && cell.column === label.column + 1
        ? { ...cell, value: asOf }
        : { ...cell, ...(formula === undefined ? {} : { formula }) },
    ),
  };
}

/** A farm book with a product's seasons against each other. */
export const yearsBook = (
  contents: readonly Contents[],
  question: {
    readonly product: string;
    readonly season?: number;
    readonly against?: number;
  },
  plain = false,
): Workbook =>
  withBook(
    contents,
    [
      yearsSheet({
        contents,
        existingSheets: [],
        portable: plain,
        ...question,
      }),
    ],
    plain,
  );

/** The bytes of each, worked out. */
export const overheadsWorkbook = async (
  ...asked: Parameters<typeof overheadsBook>
): Promise<Uint8Array> => workedOut(overheadsBook(...asked));
export const channelsWorkbook = async (
  ...asked: Parameters<typeof channelsBook>
): Promise<Uint8Array> => workedOut(channelsBook(...asked));
export const yearsWorkbook = async (
  ...asked: Parameters<typeof yearsBook>
): Promise<Uint8Array> => workedOut(yearsBook(...asked));

const workedOut = async (workbook: Workbook): Promise<Uint8Array> =>
  writeXlsx((await calculate(workbook, gridFunctions)).workbook);

function withBook(
  contents: readonly Contents[],
  built: readonly Built[],
  plain: boolean,
): Workbook {
  const book = farmBook(contents);
  const live: Workbook = {
    ...book,
    sheets: [...built.map(({ sheet }) => sheet), ...book.sheets],
    names: [...book.names, ...built.flatMap(({ names }) => names)],
  };
  return plain ? portable(live) : live;
}
