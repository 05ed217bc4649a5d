import type { Contents } from "../../book/contents";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { farmBook } from "../../sheets/farm-book";
import { place } from "../../sheets/place";
import { portable } from "../../sheets/portable";
import { describeReceived } from "../../sheets/totes/received-sheet";
import { toteSheets } from "../../sheets/totes/totes-sheets";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

/** The bytes of a farm book with its tote sheets, worked out. */
export const totesWorkbook = async (
  contents: readonly Contents[],
  how: {
    readonly asOf?: number | undefined;
    readonly received?: string | undefined;
  } = {},
): Promise<Uint8Array> =>
  writeXlsx(
    (await calculate(totesBook(contents, how), gridFunctions)).workbook,
  );

/** The same as a workbook whose formulas have no results yet; `plain` holds none of our functions. */
export function totesBook(
  contents: readonly Contents[],
  how: {
    readonly plain?: boolean;
    readonly asOf?: number | undefined;
    /** A lot whose receiving gets a sheet of its own. */
    readonly received?: string | undefined;
  } = {},
): Workbook {
  const book = farmBook(contents);
  const totes = toteSheets({
    contents,
    existingSheets: [],
    portable: how.plain === true,
    ...(how.asOf === undefined ? {} : { asOf: how.asOf }),
  });
  const live: Workbook = {
    ...book,
    sheets: [
      ...totes.sheets,
      ...(how.received === undefined
        ? []
        : [
            place(describeReceived(contents, how.received), {
              portable: how.plain === true,
            }).sheet,
          ]),
      ...book.sheets,
    ],
    names: [...book.names, ...totes.names],
  };
  return how.plain === true ? portable(live) : live;
}
