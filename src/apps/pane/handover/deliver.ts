import type { Host } from "../../../hosts/host";
import type { Copy } from "../../../sheets/handover/copy";

const XLSX =
  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Writes the copy, searches its bytes and gives it to the person: as a new workbook in Excel, else as a download. Says which. */
export async function deliver(
  host: Pick<Host, "inExcel">,
  copy: Copy,
  name: string,
): Promise<string> {
  // Writing files is a large part of the program and is fetched only when it is wanted.
  const { writeCopy } = await import("../../../hosts/file/leaks/write-copy");
  const bytes = await writeCopy(copy);
  if (host.inExcel) {
    await host.inExcel.openAsNewWorkbook(bytes);
    return "The copy is open as a new workbook; nothing removed is in it. Save it under a name of its own.";
  }
  const fileName = `${name.replace(/[\\/:*?"<>|]+/g, " ").trim()}.xlsx`;
  const address = URL.createObjectURL(
    new Blob([bytes as Uint8Array<ArrayBuffer>], { type: XLSX }),
  );
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser needs the address until it has begun to write the file.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return `Saved as ${fileName}, in your browser's download folder; nothing removed is in it.`;
}
