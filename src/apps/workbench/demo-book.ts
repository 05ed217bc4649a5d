import { tableList } from "../../book/book";
import { bookTablesFromCsv, type CsvFile } from "../../book/from-csv";
import { readCsv } from "../../hosts/file/read-csv";
import { farmBook } from "../../sheets/farm-book";
import type { Workbook } from "../../sheets/workbook";

/** The invented farm's book, made from its CSV files, which come with the page. */
export async function demoBook(): Promise<Workbook> {
  const files = new Map<string, CsvFile>();
  for (const [, table] of tableList) {
    const text = await csvText(table.csv);
    if (text !== undefined) files.set(table.csv, readCsv(text, table.csv));
  }
  return farmBook(bookTablesFromCsv(files).tables);
}

/** Undefined for a file this farm does without. */
async function csvText(name: string): Promise<string | undefined> {
  try {
    const stem = name.replace(/\.csv$/, "");
    // All of them in one piece of the page, fetched when the demo is wanted.
    const file = (await import(
      /* webpackMode: "lazy-once", webpackChunkName: "demo-records" */
      `../../../sample-workbooks/fernkettle-hollow/${stem}.csv`
    )) as { readonly default: string };
    return file.default;
  } catch (problem) {
    if (problem instanceof Error && /Cannot find module/.test(problem.message))
      return undefined;
    throw problem;
  }
}
