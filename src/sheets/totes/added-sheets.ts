import { bookTables } from "../../book/book";
import { type Contents, contentsOf } from "../../book/contents";
import { farmBookSheet } from "../farm-book-sheet";
import { portable } from "../portable";
import { tablesOf } from "../tables-of";
import type { Sheet, Workbook } from "../workbook";
import { toteTables } from "./facts";
import { type ToteSheets, toteSheets } from "./totes-sheets";

/**
 * What a workbook needs to keep a tote register: the tables it lacks, each on a sheet of its own, and the tote sheets.
 * Plain worksheet functions only. A table it has already is used where it stands; the sheets' names give way to its own.
 * Refuses (#VALUE!) a workbook that has these sheets, or a table of that name without the columns needed.
 */
export function addedToteSheets(
  contents: readonly Contents[],
  existingSheets: readonly string[],
  asOf?: number,
): Pick<ToteSheets, "sheets" | "names"> {
  const missing = toteTables
    .map((key) => bookTables[key])
    .filter((table) => !contentsOf(contents, table));
  const tables: Sheet[] = [];
  for (const table of missing) {
    const sheet = farmBookSheet(table, []);
    tables.push({
      ...sheet,
      name: freeName(sheet.name, [
        ...existingSheets,
        ...tables.map(({ name }) => name),
      ]),
    });
  }
  const fresh = tablesOf({ title: "", names: [], sheets: tables });
  const totes = toteSheets({
    contents: [...contents, ...fresh],
    existingSheets,
    portable: true,
    ...(asOf === undefined ? {} : { asOf }),
  });
  return { sheets: [...totes.sheets, ...plain(tables)], names: totes.names };
}

/** The sheets of a workbook that hold tables of a farm book: what the added sheets read. */
export const sheetsRead = (workbook: Workbook): readonly Sheet[] => {
  const known = new Set(
    Object.values(bookTables).map(({ name }) => name.toLowerCase()),
  );
  return workbook.sheets.filter(({ tables }) =>
    tables.some(({ name }) => known.has(name.toLowerCase())),
  );
};

const plain = (sheets: readonly Sheet[]): readonly Sheet[] =>
  portable({ title: "", names: [], sheets }).sheets;

/** "Invoices", or "Invoices 2" in a workbook that has such a sheet. */
function freeName(name: string, taken: readonly string[]): string {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  for (let n = 1; ; n += 1) {
    const free = n === 1 ? name : `${name} ${n}`;
    if (!used.has(free.toLowerCase())) return free;
  }
}
