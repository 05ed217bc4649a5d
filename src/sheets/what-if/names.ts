import { namedPlace, type NamedPlace } from "../costing/names";
import type { DefinedName } from "../workbook";

export const WHAT_IF = "What if";

/** What the what-if sheet gives names to. */
export const whatIfKeys = [
  "bulk",
  "step",
  "wages",
  "containers",
  "channel",
  "over",
  "drawn",
  "glance",
  "steps",
  "moves",
  "picture",
] as const;

export type WhatIfKey = (typeof whatIfKeys)[number];

/** "what_if_bulk" */
export const whatIfName = (key: WhatIfKey): string => `what_if_${key}`;

/** Where the workbook's what-if sheet keeps its figures; empty without one. */
export function whatIfNames(
  names: readonly DefinedName[],
): Partial<Readonly<Record<WhatIfKey, NamedPlace>>> {
  const found: Partial<Record<WhatIfKey, NamedPlace>> = {};
  for (const key of whatIfKeys) {
    const name = names.find((n) => n.name.toLowerCase() === whatIfName(key));
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}
