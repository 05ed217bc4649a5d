import { readBook } from "../../src/book/read";
import { costingSheet } from "../../src/sheets/costing/costing-sheet";
import { farmBook } from "../../src/sheets/farm-book";
import type { Workbook } from "../../src/sheets/workbook";
import { demoTables } from "../book/csv-folder";

export const demoBook = () => readBook(demoTables());

export const demoProducts = (): readonly string[] =>
  demoBook().book.products.map(({ product }) => product);

/** The demo farm's book with a costing sheet for each product named. */
export function demoWorkbook(
  products: readonly string[],
  bottles: number,
  portable = false,
): Workbook {
  const contents = demoTables();
  const book = farmBook(contents);
  const costings = products.map((product) =>
    costingSheet({ contents, product, bottles, existingSheets: [], portable }),
  );
  return {
    ...book,
    sheets: [...book.sheets, ...costings.map(({ sheet }) => sheet)],
    names: [...book.names, ...costings.flatMap(({ names }) => names)],
  };
}
