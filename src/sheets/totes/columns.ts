import type { Column } from "../model";

/** A figure of another sheet as a formula refers to it: a cell of its own, or a column of one of its tables. */
export type Reference = (name: string) => string;

/** A column of a sheet's table; the formula stands without its "=". */
export const column = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: { formula: `=${formula}` },
});

/** Row {n} of a book table's column as text; "" beyond its end, where the cell is blank and where there is no such column. */
export const textAt = (source: string | undefined): string =>
  source === undefined
    ? '""'
    : `IF({n}>ROWS(${source}),"",TRIM(INDEX(${source},{n})&""))`;

/** The same as a number; "" where no number stands. */
export const numberAt = (source: string | undefined): string =>
  source === undefined
    ? '""'
    : `IF({n}>ROWS(${source}),"",IF(ISNUMBER(INDEX(${source},{n})),INDEX(${source},{n}),""))`;

export const money = "#,##0.00";
export const weight = "#,##0";
export const day = "yyyy-mm-dd";

/** A working column: its zeros would only fill the page. */
export const quietMoney = "#,##0.00;-#,##0.00;";
export const quiet = "0;-0;";
