import type { CellPlace, TableContents } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
import { as } from "../../../measures/quantity";
import { cellAddress } from "../../../sheets/address";
import { tableRows } from "../table-rows";

/** The newest bulk price of a syrup kind and the cell that holds it. */
export interface BulkPrice {
  readonly kind: string;
  readonly price: number | undefined;
  /** "2026-11-20", or undefined when the row has no date. */
  readonly validFrom: string | undefined;
  readonly place: CellPlace;
  /** "Bulk prices, C2" */
  readonly where: string;
}

export function newestBulkPrice(
  tables: readonly TableContents[],
  kind: string,
): BulkPrice | undefined {
  const newest = tableRows(tables, "BulkPrices")
    .filter(
      (row) => row.text("Syrup kind").toLowerCase() === kind.toLowerCase(),
    )
    .reduce<ReturnType<typeof tableRows>[number] | undefined>(
      (best, row) =>
        best &&
        (row.number("Valid from") ?? 0) <= (best.number("Valid from") ?? 0)
          ? best
          : row,
      undefined,
    );
  const place = newest?.place("Price per lb");
  if (!newest || !place) return undefined;
  const serial = newest.number("Valid from");
  return {
    kind: newest.text("Syrup kind"),
    price: newest.number("Price per lb"),
    validFrom: serial === undefined ? undefined : isoDate(as(serial)),
    place,
    where: `${place.sheet}, ${cellAddress(place.row, place.column)}`,
  };
}
