import type { TableContents } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
import { as } from "../../../measures/quantity";
import { tableRows } from "../table-rows";
import type { Choice } from "./form-parts";
import type { PartKind } from "./slots";

/** Parts of some kinds, as choices. */
export const partChoices = (
  tables: readonly TableContents[],
  kinds: readonly PartKind[],
): readonly Choice[] =>
  tableRows(tables, "Parts")
    .filter((row) => (kinds as readonly string[]).includes(row.text("Kind")))
    .map((row) => ({
      value: row.text("Part"),
      text: [row.text("Part"), row.text("Description")]
        .filter(Boolean)
        .join(", "),
    }));

/** The different texts of a column, as choices in the order of the book. */
export function textChoices(
  tables: readonly TableContents[],
  ...columns: readonly (readonly [table: string, heading: string])[]
): readonly Choice[] {
  const texts = columns.flatMap(([table, heading]) =>
    tableRows(tables, table).map((row) => row.text(heading)),
  );
  return [...new Set(texts)]
    .filter(Boolean)
    .map((text) => ({ value: text, text }));
}

/**
 * The newest day the book knows, "2026-11-20". Costing sheets reckon prices as of that day, so a price that starts
 * later would not be seen yet.
 */
export function newestDay(tables: readonly TableContents[]): string {
  const days = [
    ["Lots", "Received"],
    ["LotUse", "Date"],
    ["Runs", "Date"],
    ["BulkPrices", "Valid from"],
  ].flatMap(([table, heading]) =>
    tableRows(tables, table ?? "").flatMap(
      (row) => row.number(heading ?? "") ?? [],
    ),
  );
  return days.length === 0 ? "" : isoDate(as(Math.max(...days)));
}
