import { CellValueType, type ICellData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { unusable } from "../../measures/cannot-answer";
import { cellAddress } from "../../sheets/address";
import type { CellPlace, FormulaForCell } from "../host";
import type { GridSession } from "./grid-session";
import { valueToGrid } from "./stored-value";

/** Writes a formula into a cell, whatever it holds, and gives the way to put the cell back as it was. */
export function withFormula(
  session: GridSession,
  at: CellPlace,
  { formula, format }: FormulaForCell,
): () => void {
  const sheet = session.book.sheet(at.sheet);
  makeRoom(sheet, at);
  const before = contentOf(session, at);
  const own = sheet.getRange(at.row, at.column).getCellStyleData()?.n;
  const isFormatted = format !== undefined && !own;
  write(session, at, {
    ...nothing,
    f: formula,
    ...(isFormatted ? { s: { n: { pattern: format } } } : {}),
  });
  const written = session.facts(at).formula;
  return () => {
    if (session.facts(at).formula !== written)
      throw unusable(
        `${at.sheet}, ${cellAddress(at.row, at.column)} has been changed since, so it stays`,
      );
    write(session, at, {
      ...before,
      ...(isFormatted ? { s: { n: null } } : {}),
    });
  };
}

/** A sheet has only so many rows and columns until somebody needs more. */
export function makeRoom(
  sheet: FWorksheet,
  { row, column }: Pick<CellPlace, "row" | "column">,
): void {
  if (row >= sheet.getMaxRows()) sheet.setRowCount(row + 1);
  if (column >= sheet.getMaxColumns()) sheet.setColumnCount(column + 1);
}

const nothing = {
  v: null,
  t: CellValueType.STRING,
  f: null,
  si: null,
  p: null,
} as const;

/** What a cell holds, without its looks. A formula's result follows by itself. */
function contentOf(session: GridSession, at: CellPlace): ICellData {
  const { formula, value } = session.facts(at);
  if (formula !== undefined) return { ...nothing, f: formula };
  const raw = session.book
    .sheet(at.sheet)
    .getSheet()
    .getCellRaw(at.row, at.column);
  return raw?.p
    ? { ...nothing, p: raw.p }
    : { ...nothing, ...valueToGrid(value) };
}

const write = (session: GridSession, at: CellPlace, cell: ICellData): void => {
  session.book.sheet(at.sheet).getRange(at.row, at.column).setValue(cell);
};
