import { namedPlace, type NamedPlace } from "../costing/names";
import type { DefinedName } from "../workbook";

/** What the sheet gives names to, so that the pane finds it wherever it is moved. */
export const bulkOrBottleKeys = [
  "pounds",
  "labour",
  "tote_price",
  "bulk_per_lb",
  "best",
  "best_more",
  "ways",
  "missing",
] as const;

export type BulkOrBottleKey = (typeof bulkOrBottleKeys)[number];

/** "bulk_or_bottle_G250_DK_ways" */
export const bulkOrBottleName = (
  product: string,
  key: BulkOrBottleKey,
): string => `bulk_or_bottle_${product.replace(/[^A-Za-z0-9]/g, "_")}_${key}`;

/** Where the workbook keeps the figures for a product; empty without such a sheet. */
export function bulkOrBottleNames(
  names: readonly DefinedName[],
  product: string,
): Partial<Readonly<Record<BulkOrBottleKey, NamedPlace>>> {
  const found: Partial<Record<BulkOrBottleKey, NamedPlace>> = {};
  for (const key of bulkOrBottleKeys) {
    const wanted = bulkOrBottleName(product, key).toLowerCase();
    const name = names.find((n) => n.name.toLowerCase() === wanted);
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}

export const bulkOrBottleSheetName = (product: string): string =>
  `Bulk or bottle ${product.replace(/[\\/?*[\]:']/g, "-")}`.slice(0, 31);
