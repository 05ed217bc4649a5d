import { bookTables, tableList } from "../book/book";
import { columnAt, type Contents, contentsOf } from "../book/contents";
import { unusable } from "../measures/cannot-answer";
import { fixedAddress, sheetReference } from "./address";

/** A declared column's cells as they stand; none where the workbook has no such table or column. */
export function bookColumn(
  contents: readonly Contents[],
  key: keyof typeof bookTables,
  name: string,
): readonly unknown[] {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  const declared = (
    table.columns as Readonly<Record<string, { readonly heading: string }>>
  )[name];
  if (!given || !declared) return [];
  const at = columnAt(given.headings, declared);
  return given.rows.map((row) => row[at] ?? null);
}

/** Whether the workbook's table has a declared column; books of before it do not. */
export function bookHas(
  contents: readonly Contents[],
  key: keyof typeof bookTables,
  name: string,
): boolean {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  const declared = (
    table.columns as Readonly<Record<string, { readonly heading: string }>>
  )[name];
  return (
    given !== undefined &&
    declared !== undefined &&
    columnAt(given.headings, declared) >= 0
  );
}

/** Rows of a table as they stand. */
export const bookRows = (
  contents: readonly Contents[],
  key: keyof typeof bookTables,
): number => contentsOf(contents, bookTables[key])?.rows.length ?? 0;

/** Refuses (#VALUE!) a workbook without a table that a sheet needs. */
export function needBook(contents: readonly Contents[], what: string): void {
  for (const [, table] of tableList)
    if (!table.optional && !contentsOf(contents, table))
      throw unusable(
        `The workbook has no ${table.name} table, and ${what} needs it`,
      );
}

/** How often the commonest value is there; blanks do not count. */
export function mostOf(values: readonly unknown[]): number {
  const counts = new Map<string, number>();
  for (const value of values)
    if (value !== null && value !== "")
      counts.set(String(value), (counts.get(String(value)) ?? 0) + 1);
  return Math.max(0, ...counts.values());
}

/** Refuses (#VALUE!) a sheet that exists, in any case of letters. */
export function refuseSheet(existing: readonly string[], name: string): void {
  const taken = existing.find((s) => s.toLowerCase() === name.toLowerCase());
  if (taken !== undefined)
    throw unusable(
      `The sheet "${taken}" exists; rename or delete it before building a new one`,
    );
}

/** Where a declared column's cells stand: `Channels!$A$2:$A$9`, for a list to choose from. */
export function bookRange(
  contents: readonly Contents[],
  key: keyof typeof bookTables,
  name: string,
): string {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  const declared = (
    table.columns as Readonly<Record<string, { readonly heading: string }>>
  )[name];
  if (!given || !declared)
    throw unusable(`The workbook has no ${table.name} table`);
  const column = given.column + columnAt(given.headings, declared);
  return `${sheetReference(given.sheet)}!${fixedAddress(given.row + 1, column)}:${fixedAddress(given.row + Math.max(1, given.rows.length), column)}`;
}
