import { tableList } from "../book/book";
import { type Contents, contentsOf } from "../book/contents";
import { setting } from "../book/setting";
import { settings } from "../book/tables/settings";
import { readTable } from "../book/read-table";
import type { BookRow } from "../book/book";
import { farmBookSheet } from "./farm-book-sheet";
import type { Workbook } from "./workbook";

/** The farm book as a workbook: one sheet and one worksheet table for each table, in the book's order. */
export function farmBook(given: readonly Contents[]): Workbook {
  return {
    title: `${farmName(given)}: farm book`,
    sheets: tableList
      .filter(
        ([, table]) =>
          (!table.comesFromRoll && !table.onlyWhereKept) ||
          contentsOf(given, table),
      )
      .map(([, table]) => farmBookSheet(table, given)),
    names: [],
  };
}

/** What the farm calls itself in its settings. */
export function farmName(given: readonly Contents[]): string {
  const contents = contentsOf(given, settings);
  if (contents === undefined) return "Our farm";
  const rows = readTable(settings, contents)
    .rows as unknown as readonly BookRow<"settings">[];
  return setting({ settings: rows }, "Farm") ?? "Our farm";
}
