import type { Host } from "../../../hosts/host";
import { unusable } from "../../../measures/cannot-answer";
import { sameValue } from "../../../sheets/compare/compare-workbooks";
import type { CellValue, Stored } from "../../../sheets/workbook";
import type { Write } from "../last-write";
import type { Offer } from "./offers";
import { shownAs } from "./shown-as";

type Taken = Extract<Offer, { readonly can: "take over" }>;

/**
 * Types one accepted change into the book's own cell. Refuses (#VALUE!) when somebody has changed that cell since the
 * offer was made, and so does taking it back.
 */
export async function takeOver(
  host: Pick<Host, "readCell" | "setCell">,
  { place, where, holds, value }: Taken,
  format: string | undefined,
): Promise<Write> {
  await requireHolds(host, { place, where }, holds);
  await host.setCell(place, value);
  return {
    says: `${where} is now ${shownAs(value, format)}; it was ${shownAs(holds, format)}.`,
    takeBack: async () => {
      await requireHolds(host, { place, where }, value);
      await host.setCell(place, typed(holds));
      return `${where} is ${shownAs(holds, format)} again.`;
    },
  };
}

async function requireHolds(
  host: Pick<Host, "readCell">,
  { place, where }: Pick<Taken, "place" | "where">,
  wanted: Stored,
): Promise<void> {
  const { value, formula } = await host.readCell(place);
  if (formula !== undefined || !sameValue(value, wanted))
    throw unusable(
      `${where} has been changed since, so it stays as it is; look at it again`,
    );
}

const typed = (value: Stored): CellValue =>
  typeof value === "object" ? null : value;
