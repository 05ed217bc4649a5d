import type { Contents } from "../../book/contents";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { costingSheet } from "../../sheets/costing/costing-sheet";
import { farmBook } from "../../sheets/farm-book";
import { portable } from "../../sheets/portable";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

export interface Run {
  readonly product: string;
  readonly bottles: number;
}

/** The bytes of a farm book with a costing sheet for each run, worked out; `plain` holds none of our functions. */
export async function costingWorkbook(
  contents: readonly Contents[],
  runs: readonly Run[],
  plain = false,
): Promise<Uint8Array> {
  const { workbook } = await calculate(
    costingBook(contents, runs, plain),
    gridFunctions,
  );
  return writeXlsx(workbook);
}

/** The same as a workbook whose formulas have no results yet. */
export function costingBook(
  contents: readonly Contents[],
  runs: readonly Run[],
  plain = false,
): Workbook {
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
  return plain ? portable(live) : live;
}
