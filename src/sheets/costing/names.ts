import type { Area, DefinedName } from "../workbook";

/** What a costing sheet gives names to, so that the pane and the command line find it wherever it is moved. */
export const costingKeys = [
  "bottles",
  "line",
  "chosen_line",
  "rate",
  "limited_by",
  "crossover_text",
  "bulk_price",
  "lb_per_bottle",
  "full_basis",
  "full_replacement",
  "full_average",
  "full_oldest",
  "direct_replacement",
  "direct_average",
  "direct_oldest",
  "overhead",
  "case_replacement",
  "missing",
  "parts",
  "channels",
  "checks",
] as const;

export type CostingKey = (typeof costingKeys)[number];

/** A named area with its sheet. */
export interface NamedPlace extends Area {
  readonly sheet: string;
}

/** "cost_P250_LOFT_bottles" */
export const costingName = (product: string, key: CostingKey): string =>
  `cost_${product.replace(/[^A-Za-z0-9]/g, "_")}_${key}`;

/** Where a product's costing sheet keeps its figures; empty when the workbook has none for it. */
export function costingNames(
  names: readonly DefinedName[],
  product: string,
): Partial<Readonly<Record<CostingKey, NamedPlace>>> {
  const found: Partial<Record<CostingKey, NamedPlace>> = {};
  for (const key of costingKeys) {
    const wanted = costingName(product, key).toLowerCase();
    const name = names.find((n) => n.name.toLowerCase() === wanted);
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}

const REFERENCE =
  /^=?(?:'((?:[^']|'')+)'|([^'!]+))!\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/i;

/** `'Cost P250-LOFT'!$A$2:$B$9` as a place; undefined for anything that is no plain reference. */
export function namedPlace(refersTo: string): NamedPlace | undefined {
  const match = REFERENCE.exec(refersTo.trim());
  if (!match) return undefined;
  const [, quoted, plain, fromColumn, fromRow, toColumn, toRow] = match;
  const row = Number(fromRow) - 1;
  const column = columnNumber(fromColumn ?? "");
  return {
    sheet: quoted === undefined ? (plain ?? "") : quoted.replace(/''/g, "'"),
    row,
    column,
    rows: toRow === undefined ? 1 : Number(toRow) - row,
    columns: toColumn === undefined ? 1 : columnNumber(toColumn) - column + 1,
  };
}

const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce(
    (n, letter) => n * 26 + letter.charCodeAt(0) - 64,
    0,
  ) - 1;
