import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import type { Contents } from "../../book/contents";
import type { Finding } from "../../book/finding";
import { bookTablesFromCsv } from "../../book/from-csv";
import { readCsv } from "../../hosts/file/read-csv";
import { readXlsx } from "../../hosts/file/read-xlsx";
import { unusable } from "../../measures/cannot-answer";
import { tablesOf } from "../../sheets/tables-of";
import type { Workbook } from "../../sheets/workbook";

/** A farm's tables, and what was questionable while reading the files. */
export interface BookFiles {
  readonly contents: readonly Contents[];
  readonly findings: readonly Finding[];
  /** The workbook they stood in, and what of its file not even that holds; not of a folder. */
  readonly workbook?: Workbook;
  readonly losses?: readonly string[];
}

/** Reads a farm book: a folder of CSV files, or an .xlsx file. Refuses in one sentence what is neither. */
export async function readBookFiles(place: string): Promise<BookFiles> {
  if (!existsSync(place))
    throw unusable(`${place}: there is no such file or folder.`);
  if (statSync(place).isDirectory()) return readFolder(place);
  if (!/^\.xls[xm]$/i.test(path.extname(place))) {
    throw unusable(
      `${place}: a farm book is a folder of CSV files or an .xlsx file.`,
    );
  }
  const { workbook, losses } = await readXlsx(
    readFileSync(place),
    path.basename(place),
  );
  const contents = tablesOf(workbook);
  if (contents.length === 0)
    throw unusable(
      `${path.basename(place)}: no worksheet table is in this file, so it is no farm book.`,
    );
  return { contents, findings: [], workbook, losses };
}

/** Reads a folder of CSV files headed as the demo's. */
export function readFolder(folder: string): BookFiles {
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw unusable(`${folder}: there is no such folder.`);
  const names = readdirSync(folder).filter((name) =>
    name.toLowerCase().endsWith(".csv"),
  );
  if (names.length === 0)
    throw unusable(`${folder}: no CSV file is in this folder.`);
  const files = new Map(
    names.map((name) => [name, readCsv(textOf(path.join(folder, name)), name)]),
  );
  const { tables, findings } = bookTablesFromCsv(files);
  return { contents: tables, findings };
}

/** Bytes that are no UTF-8 would otherwise turn into wrong letters without a word. */
function textOf(file: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(file));
  } catch (problem) {
    if (
      (problem as NodeJS.ErrnoException).code !==
      "ERR_ENCODING_INVALID_ENCODED_DATA"
    )
      throw problem;
    throw unusable(
      `${path.basename(file)}: the file is not UTF-8 text; save it as "CSV UTF-8" and try again.`,
    );
  }
}
