import { unusable } from "../../measures/cannot-answer";
import { cellAddress, sheetReference } from "../../sheets/address";
import type { CellValue } from "../../sheets/workbook";
import type { CellPlace, FormulaForCell } from "../host";
import { isAble } from "./abilities";
import { inExcel } from "./in-excel";
import { factsOf, refuseNoSheet, sheetOrNone } from "./read-workbook";
import { loadIsSettled, settled } from "./settling";
import { cellProperties, toEnter } from "./stored-value";

/** Types a value into a cell that holds no formula. */
export const typeValue = (at: CellPlace, value: CellValue): Promise<void> =>
  inExcel(async (context) => {
    const cell = await openCell(context, at);
    if (factsOf(cell, at).formula !== undefined)
      throw unusable(
        `${reference(at)} holds a formula and is no cell to type in`,
      );
    cell.formulas = [[toEnter(value)]];
    await finish(context);
  });

/** Puts a formula into a cell and gives the way back. */
export async function writeFormula(
  at: CellPlace,
  { formula, format }: FormulaForCell,
): Promise<() => Promise<void>> {
  const { before, formatBefore, written } = await inExcel(async (context) => {
    const cell = await openCell(context, at);
    const facts = factsOf(cell, at);
    const [[ownFormat] = []] = cell.numberFormat as unknown[][];
    cell.formulas = [[formula]];
    const isFormatted = format !== undefined && ownFormat === "General";
    if (isFormatted) cell.numberFormat = [[format]];
    // Excel spells a formula its own way; what it keeps is what must still be there later.
    cell.load(cellProperties);
    await finish(context);
    return {
      before: facts.formula ?? toEnter(facts.value),
      formatBefore: isFormatted ? ownFormat : undefined,
      written: factsOf(cell, at).formula,
    };
  });
  return () =>
    inExcel(async (context) => {
      const cell = await openCell(context, at);
      if (factsOf(cell, at).formula !== written)
        throw unusable(
          `${at.sheet}, ${cellAddress(at.row, at.column)} has been changed since, so it stays`,
        );
      cell.formulas = [[before]];
      if (formatBefore !== undefined) cell.numberFormat = [[formatBefore]];
      await finish(context);
    });
}

/** The cell with what it holds, once it is certain that it may be written to. */
async function openCell(
  context: Excel.RequestContext,
  at: CellPlace,
): Promise<Excel.Range> {
  const sheet = sheetOrNone(context, at.sheet);
  sheet.protection.load("protected");
  const cell = sheet.getCell(at.row, at.column);
  cell.load(`${cellProperties},numberFormat,rowIndex,columnIndex`);
  const { protection } = cell.format;
  protection.load("locked");
  const merged = isAble("mergedAreas")
    ? cell.getMergedAreasOrNullObject()
    : undefined;
  merged?.areas.load("items/rowIndex,items/columnIndex");
  await context.sync();
  refuseNoSheet(sheet, at.sheet);
  if (sheet.protection.protected && protection.locked)
    throw unusable(
      `the sheet "${sheet.name}" is protected; take its protection off to change ${cellAddress(at.row, at.column)}`,
    );
  const merge = merged?.isNullObject === false ? merged.areas.items[0] : null;
  if (merge && (merge.rowIndex !== at.row || merge.columnIndex !== at.column))
    throw unusable(
      `${reference(at)} lies under merged cells; what they show is in ${cellAddress(merge.rowIndex, merge.columnIndex)}`,
    );
  return cell;
}

async function finish(context: Excel.RequestContext): Promise<void> {
  const isSettled = loadIsSettled(context);
  await context.sync();
  await settled(context, isSettled);
}

const reference = (at: CellPlace): string =>
  `${sheetReference(at.sheet)}!${cellAddress(at.row, at.column)}`;
