import { newestDayIn } from "../../../book/newest-day";
import type { TableContents } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
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
 * The newest day of the book, "2026-11-20". Costing sheets reckon prices as of that day, so a price that starts later
 * would not be seen yet.
 */
export function newestDay(tables: readonly TableContents[]): string {
  const day = newestDayIn(tables);
  return day === undefined ? "" : isoDate(day);
}
