import { type Book, bookTables, type TableKey, tableList } from "./book";
import { bulkPricesFromSettings } from "./bulk-prices-from-settings";
import { type Contents, contentsOf } from "./contents";
import { crossChecks } from "./checks/cross-checks";
import type { Finding } from "./finding";
import { withoutRepeats } from "./keys";
import type { AnyRow } from "./any-row";
import { readTable } from "./read-table";
import { gallonIn } from "./gallon";
import { gallonAskedOnce } from "./gallon-question";
import { checkReferences } from "./references";
import type { Table } from "./table";

export interface BookReading {
  readonly book: Book;
  readonly findings: readonly Finding[];
}

/**
 * Reads a whole farm book from its tables, found by name, their columns by heading in any order. Never fails:
 * whatever cannot be used is a finding, and its row or cell is left out of the book.
 */
export function readBook(given: readonly Contents[]): BookReading {
  const all = withBulkPrices(given);
  const rows: Partial<Record<TableKey, readonly AnyRow[]>> = {};
  const findings: Finding[] = [];
  const gallon = gallonIn(all);
  for (const [key, table] of tableList) {
    const contents = contentsOf(all, table);
    if (contents === undefined) {
      if (!table.comesFromRoll && !table.onlyWhereKept)
        findings.push(missingTable(table));
      rows[key] = [];
      continue;
    }
    const reading = readTable(table, contents, gallon);
    const single = withoutRepeats(table, reading);
    rows[key] = single.rows;
    findings.push(...reading.findings, ...single.findings);
  }
  const checked = checkReferences(rows as Required<typeof rows>);
  // Every cell has been through its own term's reader, which is what the declared types say.
  const book = checked.book as unknown as Book;
  return {
    book,
    findings: gallonAskedOnce(gallon, book, [
      ...findings,
      ...checked.findings,
      ...crossChecks(book),
    ]),
  };
}

function withBulkPrices(given: readonly Contents[]): readonly Contents[] {
  if (contentsOf(given, bookTables.bulkPrices)) return given;
  const made = bulkPricesFromSettings(given);
  return made === undefined ? given : [...given, made];
}

const missingTable = (table: Table): Finding => ({
  where: `table ${table.name}`,
  found: "no such table",
  meaning: table.optional
    ? `nothing about it is looked at: ${table.about}`
    : `a cost cannot be worked out without it: ${table.about}`,
  todo: table.optional
    ? `if the farm has such records, give their table the name ${table.name}`
    : `give the table that holds these rows the name ${table.name}`,
});
