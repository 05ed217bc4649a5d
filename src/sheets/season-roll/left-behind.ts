import { bookTables } from "../../book/book";
import { contentsOf } from "../../book/contents";
import { listed } from "../../book/finding";
import { unusable } from "../../measures/cannot-answer";
import type { Sheet, Workbook } from "../workbook";
import { openingName } from "./opening-sheet";

/**
 * What of a workbook a season's roll does not carry, in words: sheets without a table of the book (one's own, and those
 * built from the book, which can be built anew), and on the book's own sheets what stands beside their tables.
 */
export function leftBehind(
  { sheets, names }: Workbook,
  season: number,
): readonly string[] {
  const kept = sheets.filter(hasBookTable);
  const left = sheets.filter(
    (sheet) => !hasBookTable(sheet) && sheet.name !== openingName(season),
  );
  const quoted = (all: readonly { readonly name: string }[]): string =>
    listed(
      all.map(({ name }) => `“${name}”`),
      Number.POSITIVE_INFINITY,
    );
  const beside = kept.filter(hasMoreThanTables);
  const own = names.filter(({ refersTo }) => !refersToAny(refersTo, left));
  return [
    ...(left.length === 0
      ? []
      : [`the ${left.length === 1 ? "sheet" : "sheets"} ${quoted(left)}`]),
    ...(beside.length === 0
      ? []
      : [`what stands beside the tables on ${quoted(beside)}`]),
    ...(own.length === 0
      ? []
      : [`the ${own.length === 1 ? "name" : "names"} ${quoted(own)}`]),
  ];
}

/** Refuses (#VALUE!) to leave anything behind that nobody has agreed to leave. */
export function requireLeave(
  left: readonly string[],
  agreed: boolean,
  option: string,
): void {
  if (left.length === 0 || agreed) return;
  throw unusable(
    `The new book would not hold ${listed(left, Number.POSITIVE_INFINITY)} of the old one, so nothing was written; add ${option} if they may stay in the old book alone.`,
  );
}

/** Whether a table is one of the book's, by its name. */
export const isBookTable = ({ name }: { readonly name: string }): boolean =>
  Object.values(bookTables).some(
    (table) => contentsOf([{ name } as never], table) !== undefined,
  );

const hasBookTable = ({ tables }: Sheet): boolean => tables.some(isBookTable);

/** Cells, charts or tables beside the book's own. */
const hasMoreThanTables = (sheet: Sheet): boolean =>
  (sheet.charts ?? []).length > 0 ||
  sheet.tables.some((table) => !isBookTable(table)) ||
  sheet.cells.some(
    ({ row, column, value, formula }) =>
      ((value !== undefined && value !== null && value !== "") ||
        formula !== undefined) &&
      !sheet.tables.some(
        ({ area }) =>
          row >= area.row &&
          row < area.row + area.rows &&
          column >= area.column &&
          column < area.column + area.columns,
      ),
  );

/** A name of a sheet that is left goes with it; it is told once. */
const refersToAny = (refersTo: string, sheets: readonly Sheet[]): boolean =>
  sheets.some(({ name }) =>
    [`${name}!`, `'${name.replace(/'/g, "''")}'!`].some((reference) =>
      refersTo.includes(reference),
    ),
  );
