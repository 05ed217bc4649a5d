import type { CellContent, Contents } from "../../src/book/contents";
import { readBook } from "../../src/book/read";
import { farmBook } from "../../src/sheets/farm-book";
import { tablesOf } from "../../src/sheets/tables-of";
import { demoTables } from "./csv-folder";

const demo = tablesOf(farmBook(demoTables()));

export type Change = (tables: readonly Contents[]) => readonly Contents[];

/** The demo farm's book as a worksheet gives it, some tables changed. */
export function worksheetTables(
  ...changes: readonly Change[]
): readonly Contents[] {
  return changes.reduce<readonly Contents[]>(
    (tables, change) => change(tables),
    demo,
  );
}

export const changing =
  (name: string, change: (table: Contents) => Contents) =>
  (tables: readonly Contents[]): readonly Contents[] =>
    tables.map((table) => (table.name === name ? change(table) : table));

/** Types a value into the cell under a heading, in the worksheet row counted from 1 as people see it. */
export const typing = (
  name: string,
  heading: string,
  row: number,
  value: CellContent,
) =>
  changing(name, (table) => {
    const at = table.headings.indexOf(heading);
    const index = row - table.row - 2;
    if (at < 0 || table.rows[index] === undefined)
      throw new Error(`no ${heading} row ${row} in ${name}`);
    return {
      ...table,
      rows: table.rows.map((cells, r) =>
        r === index ? cells.with(at, value) : cells,
      ),
    };
  });

export const without =
  (name: string) =>
  (tables: readonly Contents[]): readonly Contents[] =>
    tables.filter((table) => table.name !== name);

export const withoutRows = (
  name: string,
  leaves: (cells: readonly CellContent[]) => boolean,
) =>
  changing(name, (table) => ({
    ...table,
    rows: table.rows.filter((cells) => !leaves(cells)),
  }));

const usual = new Set(
  readBook(demo).findings.map((finding) => JSON.stringify(finding)),
);

/** What the changed book says that the demo book does not. */
export const newFindings = (...changes: readonly Change[]) =>
  readBook(worksheetTables(...changes)).findings.filter(
    (finding) => !usual.has(JSON.stringify(finding)),
  );

export const withoutPlaces = (book: unknown): unknown =>
  JSON.parse(
    JSON.stringify(book, (key, value: unknown) =>
      key === "place" ? undefined : value,
    ),
  );
