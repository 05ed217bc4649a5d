import type { Contents } from "../../book/contents";
import type { RunPlanQuestion } from "../../book/run-plan";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { farmBook } from "../../sheets/farm-book";
import { runPlanSheets } from "../../sheets/run-plan/run-plan-sheets";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

/** The bytes of a farm book with a run plan and its working, worked out. */
export async function planWorkbook(
  contents: readonly Contents[],
  question: RunPlanQuestion,
): Promise<Uint8Array> {
  const { workbook } = await calculate(
    planBook(contents, question),
    gridFunctions,
  );
  return writeXlsx(workbook);
}

/** The same as a workbook whose formulas have no results yet. */
export function planBook(
  contents: readonly Contents[],
  question: RunPlanQuestion,
  portable = false,
): Workbook {
  const book = farmBook(contents);
  const { plan, working, names } = runPlanSheets({
    contents,
    ...question,
    existingSheets: [],
    portable,
  });
  return {
    ...book,
    sheets: [plan, ...book.sheets, working],
    names: [...book.names, ...names],
  };
}
