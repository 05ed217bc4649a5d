import { writeXlsx as writeFile } from "hucre/xlsx";
import { unusable } from "../../measures/cannot-answer";
import type { Workbook } from "../../sheets/workbook";
import { baseFont } from "./cell-style";
import { finishPackage } from "./finish-package";
import { formulaInFile } from "./formula-text";
import { sheetToFile } from "./write-sheet";
import { textInFile } from "./worksheet-text";

/**
 * The .xlsx file of a workbook: the same workbook always gives the same bytes. Formulas keep their last results, so
 * nothing needs to be calculated to be read. Throws a sentence for what no worksheet file can hold.
 */
export async function writeXlsx(
  workbook: Workbook,
  how: {
    /** Its formulas have no results yet: whoever opens it works them out. */
    readonly asksToBeCalculated?: boolean;
  } = {},
): Promise<Uint8Array> {
  const active = workbook.sheets.findIndex((sheet) => !sheet.hidden);
  if (active < 0)
    throw unusable("A workbook needs at least one sheet that is not hidden.");
  const bytes = await writeFile({
    sheets: workbook.sheets.map(sheetToFile),
    activeSheet: active,
    defaultFont: baseFont,
    namedRanges: workbook.names.map(({ name, refersTo }) => ({
      name,
      range: textInFile(formulaInFile(refersTo)),
    })),
    ...(workbook.title
      ? { properties: { title: textInFile(workbook.title) } }
      : {}),
  }).catch((error: unknown) => {
    // The library's only complaint about plain data is a sheet name.
    if (error instanceof Error && error.name === "InvalidArgumentError")
      throw unusable(`The workbook cannot be written: ${error.message}.`);
    throw error;
  });
  return finishPackage(bytes, workbook, how.asksToBeCalculated === true);
}
