import { columnLetters } from "../../sheets/address";
import { changeCode } from "./formula-pieces";
import { columnLimit, columnNumber, rowLimit } from "./ranges";

const cell = /(?<![\w.\\$])(\$?)([A-Za-z]{1,3})(\$?)(\d{1,7})(?![\w.\\(!])/g;
const wholeColumns =
  /(?<![\w.\\$])(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})(?![\w.\\(!])/g;
const wholeRows = /(?<![\w.\\$])(\$?)(\d{1,7}):(\$?)(\d{1,7})(?![\w.\\(!])/g;

/** A formula as a cell `rows` further down and `columns` further right has it; references past an edge come round again. */
export function moveFormula(
  formula: string,
  rows: number,
  columns: number,
): string {
  const row = (fixed: string, digits: string): string =>
    fixed + (fixed ? digits : around(Number(digits) - 1 + rows, rowLimit) + 1);
  const column = (fixed: string, letters: string): string =>
    fixed +
    (fixed
      ? letters
      : columnLetters(around(columnNumber(letters) + columns, columnLimit)));
  return changeCode(formula, (code) =>
    code
      .replace(
        cell,
        (whole, c: string, letters: string, r: string, digits: string) =>
          columnNumber(letters) < columnLimit
            ? column(c, letters) + row(r, digits)
            : whole,
      )
      .replace(
        wholeColumns,
        (_, c1: string, from: string, c2: string, to: string) =>
          `${column(c1, from)}:${column(c2, to)}`,
      )
      .replace(
        wholeRows,
        (_, r1: string, from: string, r2: string, to: string) =>
          `${row(r1, from)}:${row(r2, to)}`,
      ),
  );
}

const around = (value: number, limit: number): number =>
  ((value % limit) + limit) % limit;
