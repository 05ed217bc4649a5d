import type { Host } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import type { CellValue, Stored } from "../../../sheets/workbook";
import { useAnnounce } from "../last-write";
import type { QuoteCell } from "./read-quote";

/** Writes one input, says what it did, and offers to put the old value back. */
export function useWrite(
  host: Host,
  /** What the write did, read after it has settled. */
  effect: () => Promise<string>,
): (cell: QuoteCell, value: CellValue, says: string) => Promise<void> {
  const announce = useAnnounce();
  return async ({ place, value: before }, value, says) => {
    await host.setCell(place, value);
    const old = typed(before);
    announce({
      says: `${says} ${await effect()}`.trim(),
      takeBack: async () => {
        await host.setCell(place, old);
        return `${addressOf(place)} holds ${old === null ? "nothing" : String(old)} again.`;
      },
    });
  };
}

export const addressOf = (at: QuoteCell["place"]): string =>
  `${at.sheet}, ${cellAddress(at.row, at.column)}`;

const typed = (before: Stored): CellValue =>
  typeof before === "object" || before === "" ? null : before;
