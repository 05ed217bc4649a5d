import type { Column, Table } from "./table";

export type CellContent =
  number | string | boolean | null | { readonly error: string };

/** A table's raw cells, as a host reads them from a workbook or as a folder of CSV files gives them. */
export interface Contents {
  readonly name: string;
  readonly sheet: string;
  /** Where the heading row starts; rows and columns count from 0. */
  readonly row: number;
  readonly column: number;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly CellContent[])[];
  /** Where the cells really stand, if elsewhere: in a CSV file's lines or another sheet's rows. */
  readonly from?: {
    readonly file: string;
    readonly counts: "line" | "row";
    readonly lines: readonly number[];
    readonly columns: readonly string[];
  };
}

/** "Lots row 7" as the worksheet numbers it, or "bulk_lots.csv line 7". */
export function placeOf(contents: Contents, row: number): string {
  const line = contents.from?.lines[row];
  return contents.from !== undefined && line !== undefined
    ? `${contents.from.file} ${contents.from.counts} ${line}`
    : `${contents.sheet} row ${contents.row + row + 2}`;
}

/** How the column is called where it came from. */
export function columnWords(contents: Contents, column: Column): string {
  const at = columnAt(contents.headings, column);
  return (
    (at < 0
      ? undefined
      : (contents.from?.columns[at] ?? contents.headings[at])) ?? column.heading
  );
}

/** Which column of these headings is the declared one: by its heading, else by another name of it; -1 if none. */
export function columnAt(
  headings: readonly string[],
  column: Pick<Column, "heading" | "aliases" | "csv">,
): number {
  const plain = headings.map(plainName);
  const names = [column.heading, ...(column.aliases ?? []), column.csv ?? ""];
  for (const name of names.map(plainName)) {
    const at = name === "" ? -1 : plain.indexOf(name);
    if (at >= 0) return at;
  }
  return -1;
}

/** The contents of a declared table, whatever the case and spacing of its name. */
export const contentsOf = (
  all: readonly Contents[],
  table: Pick<Table, "name">,
): Contents | undefined =>
  all.find((given) => plainName(given.name) === plainName(table.name));

/** Names are the same to us whatever their case, spaces and underscores. */
const plainName = (name: string): string =>
  name.toLowerCase().replace(/[\s_]+/g, "");
