import { isAgedKind } from "../../book/aged-syrup";
import { bookTables, tableList } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { unusable } from "../../measures/cannot-answer";
import type { ProductBlockFacts } from "../costing/product-blocks";
import { isRolled } from "../costing/season-before";
import type { SyrupFrom } from "../costing/syrup-blocks";

export interface RunPlanSheetQuestion {
  /** The book's tables as they stand. */
  readonly contents: readonly Contents[];
  readonly product: string;
  readonly bottles: number;
  readonly line?: string;
  /** A worksheet day with its part of a day. */
  readonly start?: number;
  /** Another day than the newest of the book. */
  readonly asOf?: number;
  readonly existingSheets: readonly string[];
  /** Only plain worksheet functions: opens anywhere. */
  readonly portable?: boolean;
}

/** What the shape of a run plan's sheets follows from: how many rows of what. */
export interface RunPlanFacts extends ProductBlockFacts {
  readonly from: SyrupFrom;
  /** The book was made by a season's roll. */
  readonly rolled: boolean;
  readonly lines: number;
  readonly materials: number;
  readonly lots: number;
}

/** Refuses (#VALUE!) a workbook without the tables, and a product that is not in Products. */
export function runPlanFacts({
  contents,
  product,
  bottles,
}: RunPlanSheetQuestion): RunPlanFacts {
  for (const [, table] of tableList)
    if (!table.optional && !contentsOf(contents, table))
      throw unusable(
        `The workbook has no ${table.name} table, and a run plan needs it`,
      );
  const products = rowsOf(contents, "products", ["product", "syrupKind"]);
  const row = products.find(([code]) => same(code, product));
  if (!row) throw unusable(`There is no product "${product}" in Products`);
  const barrels = rowsOf(contents, "oakBarrels", ["barrel"]).length;
  const from: SyrupFrom =
    isAgedKind(String(row[1] ?? "")) && barrels > 0 ? "barrels" : "lots";
  const lineNames = rowsOf(contents, "lines", ["line"]).map(([line]) =>
    String(line),
  );
  return {
    product: String(row[0]),
    bottles,
    lineNames,
    lines: lineNames.length,
    lossIsSet: rowsOf(contents, "settings", ["setting"]).some(([name]) =>
      same(name, "Syrup loss"),
    ),
    newestDay: newestDayFormula(contents),
    from,
    rolled: isRolled(contents),
    materials:
      rowsOf(contents, "productMaterials", ["product"]).filter(([code]) =>
        same(code, product),
      ).length + 2,
    lots:
      (from === "lots" ? rowsOf(contents, "lots", ["lot"]).length : barrels) +
      15,
  };
}

/** The named columns of a table's rows whose first named cell holds something. */
function rowsOf(
  contents: readonly Contents[],
  key: keyof typeof bookTables,
  names: readonly string[],
): readonly (readonly unknown[])[] {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  if (!given) return [];
  const columns = table.columns as Readonly<
    Record<string, { readonly heading: string; readonly csv?: string }>
  >;
  const places = names.map((name) => {
    const column = columns[name];
    return column ? columnAt(given.headings, column) : -1;
  });
  return given.rows
    .map((cells) => places.map((at) => cells[at]))
    .filter(([first]) => first !== null && first !== undefined && first !== "");
}

const same = (cell: unknown, wanted: string): boolean =>
  String(cell).trim().toLowerCase() === wanted.trim().toLowerCase();
