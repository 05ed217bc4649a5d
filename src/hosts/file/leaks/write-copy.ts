import { unusable } from "../../../measures/cannot-answer";
import type { Copy } from "../../../sheets/handover/copy";
import { writeXlsx } from "../write-xlsx";
import { leaksIn } from "./leak-check";

const MOST_TOLD = 5;

/** The file of a copy, searched once it is finished. Refuses (#VALUE!) to give it out with anything removed still in it, and names the part. */
export async function writeCopy(
  copy: Pick<Copy, "workbook" | "secrets">,
  {
    write,
    search,
  }: {
    readonly write: typeof writeXlsx;
    readonly search: typeof leaksIn;
  } = { write: writeXlsx, search: leaksIn },
): Promise<Uint8Array> {
  const bytes = await write(copy.workbook);
  const leaks = await search(bytes, copy.workbook, copy.secrets);
  if (leaks.length === 0) return bytes;
  const told = leaks
    .slice(0, MOST_TOLD)
    .map(({ part, says }) => `${part} ${says}`);
  throw unusable(
    `The copy was not written: ${told.join("; ")}${leaks.length > MOST_TOLD ? `; and ${leaks.length - MOST_TOLD} more` : ""}`,
  );
}
