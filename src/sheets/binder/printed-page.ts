import { look, type Role } from "../looks";
import { cellAddress } from "../address";
import type { Cell, PrintSetup, Sheet } from "../workbook";

/** A page of records: values as they are, sums as formulas, blanks to fill in by hand. */
export interface PrintedPage {
  readonly name: string;
  readonly title: string;
  /** What a reader must know before the tables. */
  readonly asides: readonly string[];
  readonly tables: readonly PageTable[];
  /** Column widths in characters, from column A. */
  readonly widths: readonly number[];
  readonly landscape: boolean;
  readonly foot: string;
}

export interface PageTable {
  readonly title: string;
  readonly columns: readonly PageColumn[];
  readonly rows: readonly (readonly PageCell[])[];
  /** What is said where there are no rows. */
  readonly none?: string;
}

export interface PageColumn {
  readonly label: string;
  readonly format?: string;
  readonly role?: Role;
  /** A sum below the last row. */
  readonly summed?: true;
}

/** A formula names the cells of its own row by column number: "=ROUND({1}+{2},6)". */
export type PageCell =
  string | number | undefined | { readonly formula: string };

/** The page as a sheet, with its title repeated at the head of every printed page. */
export function printedSheet(page: PrintedPage): Sheet {
  const cells: Cell[] = [];
  const heights: Record<number, number> = { 0: 26 };
  const put = (
    row: number,
    column: number,
    role: Role,
    cell: PageCell,
    format?: string,
  ): void => {
    const style = look(role, format);
    // Words beside a number of the column before would touch it.
    const isApart = column > 0 && typeof cell === "string";
    const place = {
      row,
      column,
      style: isApart ? { ...style, align: "left" as const, indent: 1 } : style,
    };
    if (style.wrap === true && typeof cell === "string")
      heights[row] = Math.max(
        heights[row] ?? 0,
        linesIn(cell, page.widths[column] ?? 10) * 13.5 + 4,
      );
    if (cell === undefined || cell === "") cells.push(place);
    else if (typeof cell === "object")
      cells.push({ ...place, formula: inRow(cell.formula, row) });
    else cells.push({ ...place, value: cell });
  };
  put(0, 0, "title", page.title);
  page.asides.forEach((text, i) => put(1 + i, 0, "aside", text));
  let row = 2 + page.asides.length;
  for (const { title, columns, rows, none } of page.tables) {
    columns.forEach((_, at) => put(row, at, "heading", at === 0 ? title : ""));
    columns.forEach(({ label }, at) => put(row + 1, at, "subheading", label));
    row += 2;
    const first = row;
    for (const own of rows) {
      columns.forEach(({ format, role }, at) =>
        put(row, at, role ?? roleOf(own[at]), own[at], format),
      );
      row += 1;
    }
    if (rows.length === 0) {
      put(row, 0, "aside", none ?? "None.");
      row += 1;
    } else if (columns.some(({ summed }) => summed)) {
      columns.forEach(({ format, summed }, at) =>
        put(
          row,
          at,
          "result",
          summed
            ? {
                formula: `=SUM(${cellAddress(first, at)}:${cellAddress(row - 1, at)})`,
              }
            : at === 0
              ? "Together"
              : "",
          format,
        ),
      );
      row += 1;
    }
    row += 1;
  }
  return {
    name: page.name,
    cells,
    tables: [],
    validations: [],
    merges: [],
    widths: Object.fromEntries(page.widths.map((width, at) => [at, width])),
    heights,
    frozen: { rows: 1, columns: 0 },
    tabColor: "#5b3a21",
    print: setup(page),
  };
}

/** Lines a text takes, word by word; a row does not grow by itself in a written file. */
function linesIn(text: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (const { length } of text.split(" ")) {
    if (used > 0 && used + 1 + length > width - 3) {
      lines += 1;
      used = length;
    } else used += (used > 0 ? 1 : 0) + length;
  }
  return lines;
}

const roleOf = (cell: PageCell): Role =>
  typeof cell === "string" || cell === undefined ? "label" : "calculated";

const inRow = (formula: string, row: number): string =>
  formula.replace(/\{(\d+)\}/g, (_, at: string) =>
    cellAddress(row, Number(at)),
  );

const setup = ({ landscape, foot }: PrintedPage): PrintSetup => ({
  paper: "letter",
  landscape,
  fit: "one page wide",
  headings: { first: 0, rows: 1 },
  foot,
});

export const day = "yyyy-mm-dd";
export const weight = "#,##0";
export const amount = "#,##0.00";
