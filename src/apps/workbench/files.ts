import type { Workbook } from "../../sheets/workbook";
import { downloadWorkbook } from "../pane/download";

/** A workbook that was opened, and what its file held that the workbench cannot keep. */
export interface OpenedFile {
  readonly workbook: Workbook;
  readonly losses: readonly string[];
}

/** The invented farm's book. */
export async function openDemo(): Promise<OpenedFile> {
  const { demoBook } = await import("./demo-book");
  return { workbook: await demoBook(), losses: [] };
}

/** Reads a file the person picked. */
export const openFile = async (file: File): Promise<OpenedFile> =>
  readFile(new Uint8Array(await file.arrayBuffer()), file.name);

// Reading and writing files is a large part of the program and is fetched only when it is wanted.
async function readFile(bytes: Uint8Array, name: string): Promise<OpenedFile> {
  const { readXlsx } = await import("../../hosts/file/read-xlsx");
  const { workbook, losses } = await readXlsx(bytes, name);
  const title = workbook.title || name.replace(/\.xlsx$/i, "");
  return { workbook: { ...workbook, title }, losses };
}

/** Hands a workbook to the browser as a download and gives the file's name. */
export async function saveFile(
  workbook: Workbook,
  name: string,
): Promise<string> {
  const { writeXlsx } = await import("../../hosts/file/write-xlsx");
  return downloadWorkbook(await writeXlsx(workbook), name);
}
