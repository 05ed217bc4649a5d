import type { TableContents } from "../../../hosts/host";
import { tableRows } from "../table-rows";

/** A product as the picker and the price view need it. */
export interface Product {
  readonly code: string;
  readonly description: string;
  readonly declared: string;
  readonly owner: string;
  readonly kind: string;
  readonly usualLine: string;
  readonly perCase: number | undefined;
}

export const productsOf = (
  tables: readonly TableContents[],
): readonly Product[] =>
  tableRows(tables, "Products")
    .map((row) => ({
      code: row.text("Product"),
      description: row.text("Description"),
      declared: row.text("Declared text"),
      owner: row.text("Label owner"),
      kind: row.text("Syrup kind"),
      usualLine: row.text("Usual line"),
      perCase: row.number("Bottles per case"),
    }))
    .filter(({ code }) => code !== "");

/** Products whose code or description holds every word typed, in any order. */
export function productsMatching(
  products: readonly Product[],
  typed: string,
): readonly Product[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return products.filter(({ code, description, declared, owner }) => {
    const all = `${code} ${description} ${declared} ${owner}`.toLowerCase();
    return words.every((word) => all.includes(word));
  });
}

/** The run size people usually make: the middle one of this product's runs, else what a closed season says, else 1,200. */
export function usualRun(
  tables: readonly TableContents[],
  code: string,
): number {
  const sizes = tableRows(tables, "Runs")
    .filter((row) => row.text("Product") === code)
    .flatMap((row) => row.number("Good bottles") ?? [])
    .sort((a, b) => a - b);
  const carried = tableRows(tables, "SeasonTotals").find(
    (row) =>
      row.text("What") === "bottles of the newest run" &&
      row.text("Of") === code,
  );
  return (
    sizes[Math.floor((sizes.length - 1) / 2)] ??
    carried?.number("Amount") ??
    1200
  );
}
