import type { CellPlace } from "../../../hosts/host";
import { unusable } from "../../../measures/cannot-answer";
import { cellAddress, sheetReference } from "../../../sheets/address";
import type { Area } from "../../../sheets/workbook";
import { readFormula } from "../why/formula";
import {
  meaningOf,
  rangeOf,
  type Range,
  type Surroundings,
} from "../why/surroundings";
import { referencesOf } from "../why/words";

/** What a typed reference may point at, and the sheet that one without a sheet's name means. */
export interface Cells extends Surroundings {
  readonly sheets: readonly string[];
  readonly home: string;
}

export interface Reference {
  /** As a formula on the home sheet writes it. */
  readonly text: string;
  /** Undefined for a name that stands for a value. */
  readonly range: Range | undefined;
}

/** The reference a text is, if it is one: cells, columns of a table, or a defined name. Throws for a sheet there is none of. */
export function referenceIn(
  written: string,
  cells: Cells,
): Reference | undefined {
  const read = readFormula(`=${written}`);
  if (!read) return undefined;
  const { home } = cells;
  const range = rangeOf(read, { sheet: home, row: 0, column: 0 }, cells);
  if (read.kind === "cells") {
    const sheet = sheetNamed(read.sheet ?? home, cells);
    const text = read.text.slice(read.text.lastIndexOf("!") + 1);
    return {
      text: sheet === home ? text : `${sheetReference(sheet)}!${text}`,
      range: { ...read.area, sheet },
    };
  }
  if (read.kind === "columns" || (read.kind === "name" && range))
    return range && { text: read.text, range };
  return read.kind === "name" && meaningOf(read.name, cells)
    ? { text: read.text, range: undefined }
    : undefined;
}

/** Every rectangle of cells that a part of a formula reads. */
export function rangesIn(text: string, cells: Cells): readonly Range[] {
  const read = readFormula(`=${text}`);
  const at = { sheet: cells.home, row: 0, column: 0 };
  return (read ? referencesOf(read) : []).flatMap(
    (reference) => rangeOf(reference, at, cells) ?? [],
  );
}

/** The one cell a text names. */
export function placeIn(written: string, cells: Cells): CellPlace {
  const range = referenceIn(written.trim(), cells)?.range;
  if (!range)
    throw unusable(
      `Cell for the answer: “${written.trim()}” is no cell; type it like B7 or ${sheetReference(cells.home)}!B7`,
    );
  if (range.rows !== 1 || range.columns !== 1)
    throw unusable("Cell for the answer: one cell is wanted, not several");
  return { sheet: range.sheet, row: range.row, column: range.column };
}

/** "B4" or "B4:C9". */
export const cellsText = ({ row, column, rows, columns }: Area): string => {
  const from = cellAddress(row, column);
  const to = cellAddress(row + rows - 1, column + columns - 1);
  return from === to ? from : `${from}:${to}`;
};

/** "'Bulk prices'!B4:C9". */
export const fullReference = (range: Range): string =>
  `${sheetReference(range.sheet)}!${cellsText(range)}`;

/** "Bulk prices, B4:C9", for people. */
export const inWords = (range: Range): string =>
  `${range.sheet}, ${cellsText(range)}`;

/** Sheets' names count in any case. */
function sheetNamed(name: string, { sheets }: Cells): string {
  const wanted = name.toLowerCase();
  const found = sheets.find((sheet) => sheet.toLowerCase() === wanted);
  if (found === undefined) throw unusable(`there is no sheet “${name}”`);
  return found;
}
