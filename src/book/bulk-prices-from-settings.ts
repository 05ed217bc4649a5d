import { columnAt, type Contents, contentsOf } from "./contents";
import { countDay, newestDayIn } from "./newest-day";
import { bulkPrices } from "./tables/bulk-prices";
import { settings } from "./tables/settings";

const REPLACEMENT = /^\s*replacement price,\s*(.+?)\s*$/i;

/** A "Replacement price, Amber" row of Settings, whose price belongs among the bulk prices. */
export const replacementKind = (name: unknown): string | undefined =>
  REPLACEMENT.exec(String(name))?.[1];

/**
 * The table Bulk prices made of the replacement prices among the settings, valid from the count date or else from
 * the newest day of the book. Undefined when no setting gives such a price or no day is known.
 */
export function bulkPricesFromSettings(
  all: readonly Contents[],
): Contents | undefined {
  const given = contentsOf(all, settings);
  if (given === undefined) return undefined;
  const nameAt = columnAt(given.headings, settings.columns.setting);
  const valueAt = columnAt(given.headings, settings.columns.value);
  const day = countDay(all) ?? newestDayIn(all);
  const found = given.rows.flatMap((row, i) => {
    const kind = replacementKind(row[nameAt]);
    return kind === undefined || day === undefined
      ? []
      : [{ i, cells: [kind, day, row[valueAt] ?? null] }];
  });
  if (found.length === 0) return undefined;
  const headings = Object.values(bulkPrices.columns).map((c) => c.heading);
  return {
    name: bulkPrices.name,
    sheet: bulkPrices.sheet,
    row: 0,
    column: 0,
    headings,
    rows: found.map(({ cells }) => cells),
    from: {
      file: given.from?.file ?? given.sheet,
      counts: given.from?.counts ?? "row",
      lines: found.map(({ i }) => given.from?.lines[i] ?? given.row + i + 2),
      columns: ["setting", "valid from", "value"],
    },
  };
}
