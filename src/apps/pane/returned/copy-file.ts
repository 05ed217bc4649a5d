import type { Workbook } from "../../../sheets/workbook";

/** A workbook file the person chose. */
export interface CopyFile {
  readonly name: string;
  readonly workbook: Workbook;
}

/** Both files of a round trip, as far as they are chosen. */
export interface RoundTrip {
  readonly sent?: CopyFile;
  readonly back?: CopyFile;
}

/** Reads a file; refuses, with a sentence, what is no workbook. */
export async function readCopy(file: File): Promise<CopyFile> {
  // Reading files is a large part of the program and is fetched only when it is wanted.
  const { readXlsx } = await import("../../../hosts/file/read-xlsx");
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { workbook } = await readXlsx(bytes, file.name);
  return { name: file.name, workbook };
}
