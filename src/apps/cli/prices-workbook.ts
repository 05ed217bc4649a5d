import type { Contents } from "../../book/contents";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { farmBook } from "../../sheets/farm-book";
import { portable } from "../../sheets/portable";
import { priceListSheets } from "../../sheets/prices/price-list-sheets";
import { whatIfSheet } from "../../sheets/what-if/what-if-sheet";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

/** The bytes of a farm book with its price list and the what-if sheet, worked out. */
export const pricesWorkbook = async (
  contents: readonly Contents[],
  asOf?: number,
): Promise<Uint8Array> =>
  writeXlsx(
    (await calculate(pricesBook(contents, { asOf }), gridFunctions)).workbook,
  );

/** The same as a workbook whose formulas have no results yet; `plain` holds none of our functions. */
export function pricesBook(
  contents: readonly Contents[],
  how: { readonly plain?: boolean; readonly asOf?: number | undefined } = {},
): Workbook {
  const book = farmBook(contents);
  const prices = priceListSheets({
    contents,
    existingSheets: [],
    portable: how.plain === true,
    ...(how.asOf === undefined ? {} : { asOf: how.asOf }),
  });
  const whatIf = whatIfSheet(prices, {
    existingSheets: [],
    portable: how.plain === true,
  });
  const live: Workbook = {
    ...book,
    sheets: [prices.list, whatIf.sheet, ...book.sheets, prices.working],
    names: [...book.names, ...prices.names, ...whatIf.names],
  };
  return how.plain === true ? portable(live) : live;
}
