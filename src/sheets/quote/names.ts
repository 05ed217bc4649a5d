import { namedPlace, type NamedPlace } from "../costing/names";
import type { DefinedName } from "../workbook";

/** What a quote gives names to, so that the pane finds it wherever it is moved. */
export const quoteKeys = [
  "quantities",
  "channel",
  "leftovers",
  "goal_on",
  "artwork",
  "valid_days",
  "one_time",
  "forecast",
  "goal",
  "valid_until",
  "tiers",
  "missing",
  "checks",
  "offer",
] as const;

export type QuoteKey = (typeof quoteKeys)[number];

const safe = (product: string): string => product.replace(/[^A-Za-z0-9]/g, "_");

/** "quote_P250_LOFT_tiers" */
export const quoteName = (product: string, key: QuoteKey): string =>
  `quote_${safe(product)}_${key}`;

/** Where a product's quote keeps its figures; empty when the workbook has none for it. */
export function quoteNames(
  names: readonly DefinedName[],
  product: string,
): Partial<Readonly<Record<QuoteKey, NamedPlace>>> {
  const found: Partial<Record<QuoteKey, NamedPlace>> = {};
  for (const key of quoteKeys) {
    const wanted = quoteName(product, key).toLowerCase();
    const name = names.find((n) => n.name.toLowerCase() === wanted);
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}

const sheetName = (words: string, product: string): string =>
  `${words} ${product.replace(/[\\/?*[\]:']/g, "-")}`.slice(0, 31);

/** The page for the customer. */
export const quotePage = (product: string): string =>
  sheetName("Quote", product);

/** The sheet for us, with what it costs. */
export const quoteWorking = (product: string): string =>
  sheetName("Quote cost", product);
