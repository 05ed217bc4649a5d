import { namedPlace, type NamedPlace } from "../costing/names";
import type { DefinedName } from "../workbook";

export const PRICE_LIST = "Price list";
export const PRICE_WORKING = "Price working";

/** What the price list gives names to, so that the pane and the command line find it wherever it is moved. */
export const priceListKeys = [
  "as_of",
  "glance",
  "under",
  "list",
  "channels",
  "checks",
] as const;

export type PriceListKey = (typeof priceListKeys)[number];

/** "price_list_as_of" */
export const priceListName = (key: PriceListKey): string => `price_list_${key}`;

/** Where the workbook's price list keeps its figures; empty without one. */
export function priceListNames(
  names: readonly DefinedName[],
): Partial<Readonly<Record<PriceListKey, NamedPlace>>> {
  const found: Partial<Record<PriceListKey, NamedPlace>> = {};
  for (const key of priceListKeys) {
    const wanted = priceListName(key);
    const name = names.find((n) => n.name.toLowerCase() === wanted);
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}
