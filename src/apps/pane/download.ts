import type { Host } from "../../hosts/host";

const XLSX =
  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Gives the person a file to keep, in the browser's download folder. */
export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser needs the address until it has begun to write the file.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** How a workbook's file reached the person. */
export type Delivered =
  | { readonly as: "a new workbook" }
  | { readonly as: "a download"; readonly file: string };

/** Opens a finished workbook file as a new workbook in Excel, and saves it as a download elsewhere. */
export async function deliverFile(
  host: Pick<Host, "inExcel">,
  bytes: Uint8Array,
  name: string,
): Promise<Delivered> {
  if (host.inExcel) {
    await host.inExcel.openAsNewWorkbook(bytes);
    return { as: "a new workbook" };
  }
  return { as: "a download", file: downloadWorkbook(bytes, name) };
}

/** Saves a workbook file under a name that any machine can hold, and gives that name. */
export function downloadWorkbook(bytes: Uint8Array, name: string): string {
  const file = `${name.replace(/[\\/:*?"<>|]+/g, " ").trim() || "book"}.xlsx`;
  download(file, bytes as Uint8Array<ArrayBuffer>, XLSX);
  return file;
}
