import { fixedAddress, sheetReference } from "./address";
import { namedPlace, type NamedPlace } from "./costing/names";
import type { PlacedSheet } from "./place";
import type { Area, DefinedName } from "./workbook";

/** Which placed cells each public name stands for: one place, or everything from one to another. */
export type Sources<K extends string> = Readonly<
  Record<K, string | readonly [first: string, last: string]>
>;

/** Workbook names for a placed sheet's figures: "years_G250_AM_steps". */
export const figureNames = <K extends string>(
  prefix: string,
  placed: PlacedSheet,
  sources: Sources<K>,
): readonly DefinedName[] =>
  Object.entries<Sources<K>[K]>(sources).map(([key, source]) => {
    const [first, last] =
      typeof source === "string" ? [source, source] : source;
    return {
      name: `${prefix}_${key}`,
      refersTo: `${sheetReference(placed.sheet.name)}!${around(
        placeOf(placed, first),
        placeOf(placed, last),
      )}`,
    };
  });

/** Where a workbook keeps the figures of such a sheet; empty when it has none. */
export function figurePlaces<K extends string>(
  prefix: string,
  keys: readonly K[],
  names: readonly DefinedName[],
): Partial<Readonly<Record<K, NamedPlace>>> {
  const found: Partial<Record<K, NamedPlace>> = {};
  for (const key of keys) {
    const wanted = `${prefix}_${key}`.toLowerCase();
    const name = names.find((one) => one.name.toLowerCase() === wanted);
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}

/** A product's code as part of a workbook name. */
export const inNames = (product: string): string =>
  product.replace(/[^A-Za-z0-9]/g, "_");

/** At most 31 characters, without the signs a sheet name may not hold. */
export const sheetNameOf = (words: string, product: string): string =>
  `${words} ${product.replace(/[\\/?*[\]:']/g, "-")}`.slice(0, 31);

function around(from: Area, to: Area): string {
  const corner = fixedAddress(from.row, from.column);
  const end = fixedAddress(to.row + to.rows - 1, to.column + to.columns - 1);
  return corner === end ? corner : `${corner}:${end}`;
}

function placeOf({ places }: PlacedSheet, name: string): Area {
  const found = places.get(name);
  if (!found) throw new Error(`No cell is called "${name}"`);
  return found;
}
