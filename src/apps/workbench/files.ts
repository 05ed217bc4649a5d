import type { Workbook } from "../../sheets/workbook";

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
  const bytes = await writeXlsx(workbook);
  const fileName = `${name.replace(/[\\/:*?"<>|]+/g, " ").trim() || "book"}.xlsx`;
  const address = URL.createObjectURL(
    new Blob([bytes as Uint8Array<ArrayBuffer>], { type: XLSX }),
  );
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser needs the address until it has begun to write the file.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return fileName;
}

const XLSX =
  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
