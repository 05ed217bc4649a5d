import type { Contents } from "../book/contents";
import { contentsOf } from "../book/contents";
import { gallonIn } from "../book/gallon";
import { isSameName } from "../book/keys";
import { settings } from "../book/tables/settings";
import { LITRES_PER_IMPERIAL_GALLON } from "../measures/gallon";
import { findUnit, LITRES_PER_GALLON } from "../measures/units";
import { bookColumn } from "./book-cells";
import { setting } from "./costing/book-references";
import type { SheetDescription } from "./model";

/** Volumes among the settings that sheets read in US gallons. */
const VOLUMES = [
  "Kettle working fill",
  "Kettle left-behind",
  "Least kettle fill",
] as const;

const IMPERIAL = `${LITRES_PER_IMPERIAL_GALLON}/${LITRES_PER_GALLON}`;

/** US gallons in one of the book's, as Settings say; "" where a book for Canada says neither. */
const EACH = `IF(IFERROR(${setting("Gallon")}&"","")="imperial",${IMPERIAL},IF(IFERROR(${setting("Gallon")}&"","")="US",1,""))`;

/** A price for a gallon counts the book's gallons. */
const COUNTED = '{row.basis}="USD per gallon",{row.gallons}';

/**
 * The sheet of a book that says which gallon it means, or must: its formulas then follow the setting. The sheets of every
 * other book stay as they are.
 */
export function inBooksGallon(
  description: SheetDescription,
  contents: readonly Contents[],
): SheetDescription {
  if (!saysGallon(contents)) return description;
  const volumes = VOLUMES.filter((name) => isInGallons(contents, name)).map(
    (name) => [setting(name), `(${setting(name)}*${EACH})`] as const,
  );
  const inside = (text: string): string =>
    [
      ...volumes,
      [
        COUNTED,
        `{row.basis}="USD per gallon",IFERROR({row.gallons}/(${EACH}),"")`,
      ] as const,
      [
        `IF({row.counts}<>"yes","",IF(ISNUMBER({row.gross})`,
        `IF({row.counts}<>"yes","",IF({row.basis}="USD per gallon",IF(ISNUMBER(${EACH}),"","which gallon its price is for: the setting Gallon; "),"")&IF(ISNUMBER({row.gross})`,
      ] as const,
    ].reduce((result, [from, to]) => result.replaceAll(from, to), text);
  return withFormulas(description, inside);
}

/** US gallons in one of the book's, as a formula without "=" that may have no answer; "1" in a book that need not say. */
export const usGallonsEachFormula = (contents: readonly Contents[]): string =>
  saysGallon(contents) ? EACH : "1";

const saysGallon = (contents: readonly Contents[]): boolean =>
  gallonIn(contents) !== "US" ||
  (contentsOf(contents, settings) !== undefined &&
    bookColumn(contents, "settings", "setting").some((name) =>
      isSameName(String(name), "Gallon"),
    ));

/** A setting without a unit is in US gallons, as its own note says; one in another unit is not of this. */
function isInGallons(contents: readonly Contents[], name: string): boolean {
  const at = bookColumn(contents, "settings", "setting").findIndex((one) =>
    isSameName(String(one), name),
  );
  const unit = String(bookColumn(contents, "settings", "unit")[at] ?? "");
  return (
    /\b(imp(erial)?|uk)\b/i.test(unit) ||
    (findUnit(unit)?.symbol === "gal" && !/\bus\b/i.test(unit))
  );
}

/** Every formula of a description written anew. */
function withFormulas<T>(node: T, write: (text: string) => string): T {
  if (Array.isArray(node))
    return node.map((one: unknown) => withFormulas(one, write)) as T;
  if (typeof node !== "object" || node === null) return node;
  return Object.fromEntries(
    Object.entries(node).map(([key, value]: readonly [string, unknown]) => [
      key,
      (key === "formula" || key === "portable") && typeof value === "string"
        ? write(value)
        : withFormulas(value, write),
    ]),
  ) as T;
}
