import { bookTables, tableList } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { unusable } from "../../measures/cannot-answer";
import { isRolled } from "../costing/season-before";

export interface PriceListQuestion {
  /** The book's tables as they stand. */
  readonly contents: readonly Contents[];
  readonly existingSheets: readonly string[];
  /** Only plain worksheet functions: opens anywhere. */
  readonly portable?: boolean;
  /** Another day than the newest of the book. */
  readonly asOf?: number;
}

/** What the sheets are laid out by; everything else they look up themselves. */
export interface PriceListFacts {
  readonly firstProduct: string;
  /** Rows for the products there are and a few more. */
  readonly rows: number;
  readonly materials: number;
  readonly lots: number;
  readonly barrels: number;
  readonly lines: number;
  readonly bills: number;
  /** The book was made by a season's roll. */
  readonly rolled: boolean;
  /** The channels that sell by the bottle, with their rows in Channels. */
  readonly channels: readonly { readonly no: number; readonly name: string }[];
  readonly channelRows: number;
  readonly lossIsSet: boolean;
  /** The day of the prices: a formula, or a day that was asked for. */
  readonly day: string | number;
  readonly kinds: readonly string[];
}

/** Looks at the book once. Refuses (#VALUE!) a workbook that lacks a table every costing needs. */
export function priceListFacts({
  contents,
  asOf,
}: PriceListQuestion): PriceListFacts {
  for (const [, table] of tableList)
    if (!table.optional && !contentsOf(contents, table))
      throw unusable(
        `The workbook has no ${table.name} table, and a price list needs it`,
      );
  const count = (key: keyof typeof bookTables): number =>
    contentsOf(contents, bookTables[key])?.rows.length ?? 0;
  const texts = (key: keyof typeof bookTables, name: string) =>
    cellsOf(contents, key, name).map((cell) => String(cell ?? "").trim());
  const products = count("products");
  if (products === 0)
    throw unusable("Products has no row, so there is nothing to price");
  const channelNames = texts("channels", "channel");
  const perOrder = cellsOf(contents, "channels", "bottlesPerOrder").map(Number);
  const seasons = texts("overheads", "season");
  const barrels = texts("oakBarrels", "barrel").filter(Boolean).length;
  return {
    firstProduct: texts("products", "product").find(Boolean) ?? "",
    rows: products + spare(products),
    materials: withSpare(count("productMaterials")),
    lots: withSpare(count("lots")),
    barrels: barrels === 0 ? 0 : withSpare(count("oakBarrels")),
    lines: Math.max(1, count("lines")),
    bills:
      Math.max(
        0,
        ...seasons.map((one) => seasons.filter((s) => s === one).length),
      ) + 4,
    rolled: isRolled(contents),
    channels: channelNames
      .map((name, i) => ({ no: i + 1, name }))
      .filter(({ name, no }) => name !== "" && (perOrder[no - 1] ?? 0) > 0),
    channelRows: Math.max(1, channelNames.length),
    lossIsSet: texts("settings", "setting").some(
      (s) => s.toLowerCase() === "syrup loss",
    ),
    day: asOf ?? newestDayFormula(contents),
    kinds: [...new Set(texts("bulkPrices", "syrupKind").filter(Boolean))],
  };
}

const spare = (rows: number): number => Math.max(4, Math.ceil(rows / 50));
const withSpare = (rows: number): number => rows + 2 * spare(rows);

function cellsOf(
  contents: readonly Contents[],
  key: keyof typeof bookTables,
  name: string,
): readonly unknown[] {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  const declared = (
    table.columns as Readonly<Record<string, { readonly heading: string }>>
  )[name];
  if (!given || !declared) return [];
  const at = columnAt(given.headings, declared);
  return given.rows.map((row) => row[at] ?? null);
}
