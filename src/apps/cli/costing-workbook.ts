import type { Contents } from "../../book/contents";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { costingSheet } from "../../sheets/costing/costing-sheet";
import { farmBook } from "../../sheets/farm-book";
import { portable } from "../../sheets/portable";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

/** The bytes of a farm book with a costing sheet for each run, worked out; `plain` holds none of our functions. */
export async function costingWorkbook(
  contents: readonly Contents[],
  runs: readonly { readonly product: string; readonly bottles: number }[],
  plain = false,
): Promise<Uint8Array> {
  const book = farmBook(contents);
  const costings = runs.map(({ product, bottles }) =>
    costingSheet({
      contents,
      product,
      bottles,
      existingSheets: [],
      portable: plain,
    }),
  );
  const live: Workbook = {
    ...book,
    sheets: [...costings.map(({ sheet }) => sheet), ...book.sheets],
    names: [...book.names, ...costings.flatMap(({ names }) => names)],
  };
  const { workbook } = await calculate(
    plain ? portable(live) : live,
    gridFunctions,
  );
  return writeXlsx(workbook);
}
