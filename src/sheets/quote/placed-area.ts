import { fixedAddress, sheetReference } from "../address";
import type { PlacedSheet } from "../place";
import type { Area } from "../workbook";

/** The cells from one placed name to another, as a workbook name refers to them. */
export function placedReference(
  sheet: string,
  { places }: PlacedSheet,
  first: string,
  last = first,
): string {
  const from = placeNamed(places, first);
  const to = placeNamed(places, last);
  const corner = fixedAddress(from.row, from.column);
  const end = fixedAddress(to.row + to.rows - 1, to.column + to.columns - 1);
  return `${sheetReference(sheet)}!${corner === end ? corner : `${corner}:${end}`}`;
}

function placeNamed(places: ReadonlyMap<string, Area>, name: string): Area {
  const found = places.get(name);
  if (!found) throw new Error(`The sheet has no cell "${name}"`);
  return found;
}
