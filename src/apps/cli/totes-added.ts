import { addToWorkbook } from "../../hosts/file/patch/add-to-workbook";
import { readXlsx } from "../../hosts/file/read-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { tablesOf } from "../../sheets/tables-of";
import { addedToteSheets, sheetsRead } from "../../sheets/totes/added-sheets";
import { gridFunctions } from "../grid-functions";

/** A workbook of anybody's with the tote register in it; every part of it that is not a list of sheets stays as it was. */
export async function withToteSheets(
  bytes: Uint8Array,
  fileName: string,
  asOf?: number,
): Promise<{ readonly bytes: Uint8Array; readonly added: readonly string[] }> {
  const { workbook } = await readXlsx(bytes, fileName);
  const { sheets, names } = addedToteSheets(
    tablesOf(workbook),
    workbook.sheets.map(({ name }) => name),
    asOf,
  );
  const worked = await calculate(
    { title: "", names, sheets: [...sheets, ...sheetsRead(workbook)] },
    gridFunctions,
  );
  const ours = new Set(sheets.map(({ name }) => name));
  const added = worked.workbook.sheets.filter(({ name }) => ours.has(name));
  return {
    bytes: await addToWorkbook(bytes, fileName, { sheets: added, names }),
    added: added.map(({ name }) => name),
  };
}
