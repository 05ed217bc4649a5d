import type { Host } from "../../../hosts/host";
import type { Copy } from "../../../sheets/handover/copy";
import { deliverFile } from "../download";

/** Writes the copy, searches its bytes and gives it to the person: as a new workbook in Excel, else as a download. Says which. */
export async function deliver(
  host: Pick<Host, "inExcel">,
  copy: Copy,
  name: string,
): Promise<string> {
  // Writing files is a large part of the program and is fetched only when it is wanted.
  const { writeCopy } = await import("../../../hosts/file/leaks/write-copy");
  const delivered = await deliverFile(host, await writeCopy(copy), name);
  return delivered.as === "a new workbook"
    ? "The copy is open as a new workbook; nothing removed is in it. Save it under a name of its own."
    : `Saved as ${delivered.file}, in your browser's download folder; nothing removed is in it.`;
}
