import type { TableKey } from "../../book/book";
import type { SheetDescription } from "../model";
import type { NamedFigure } from "./figure-at";
import type { LaidOut } from "./sheet-behind";
import type { Validation } from "../workbook";

/** Where the farm keeps what a figure of a copy shows: a cell of one of its tables, or an input of the sheet itself. */
export type Origin =
  | {
      readonly in: "table";
      readonly table: TableKey;
      /** Columns by key. */
      readonly column: string;
      readonly row: Readonly<Record<string, string>>;
      /** The date column by which the newest of several rows is the one that holds. */
      readonly newestBy?: string;
    }
  | {
      readonly in: "sheet";
      readonly label: string;
      readonly rule?: Validation["rule"];
    }
  | { readonly in: "nothing"; readonly why: string };

type Behind<K> = Extract<LaidOut, { readonly kind: K }>;

/** Where a figure comes from, from the kind of its sheet and its name. */
export function originOf(
  behind: LaidOut,
  figure: NamedFigure,
  /** The kind of syrup of the product, which a bulk price goes by. */
  syrupKind: (product: string) => string,
): Origin {
  const found =
    behind.kind === "costing"
      ? ofCosting(behind, figure, syrupKind)
      : behind.kind === "prices"
        ? ofPrices(behind, figure)
        : ofQuote(figure);
  return found ?? { in: "nothing", why: whyNone(figure) };
}

const whyNone = ({ isCalculated, label }: NamedFigure): string =>
  isCalculated
    ? `"${label}" is worked out from other figures, so the book has no cell for it; change what it follows from`
    : `"${label}" is not typed anywhere in the book`;

/** Columns of Products that a costing shows as they stand. */
const productColumns: Readonly<Record<string, string>> = {
  description: "description",
  owner: "labelOwner",
  declared: "declaredText",
  declared_ml: "declared",
  fill: "fill",
  per_case: "bottlesPerCase",
  kind: "syrupKind",
  organic: "organic",
  fill_seconds: "fillTime",
};

/** What a reader tries on one cell of a costing and the farm types in another. */
const typedAs: Readonly<Record<string, string>> = { brix: "brix_typed" };

function ofCosting(
  { product, description }: Behind<"costing">,
  { name, of }: NamedFigure,
  syrupKind: (product: string) => string,
): Origin | undefined {
  const column = productColumns[name];
  if (column !== undefined) return inProducts(product, column);
  if (name === "channels.price") return price(product, of);
  if (name === "channels.goal")
    return {
      in: "table",
      table: "channels",
      column: "goalMargin",
      row: { channel: of },
    };
  if (name === "bulk_price") return bulkPrice(syrupKind(product));
  return inputOf(description, typedAs[name] ?? name);
}

function ofPrices(
  { description }: Behind<"prices">,
  { name, label, of }: NamedFigure,
): Origin | undefined {
  if (/^list\.price_\d+$/.test(name))
    return price(of, label.replace(/: price$/, ""));
  if (/^bulk_\d+$/.test(name)) return bulkPrice(label);
  if (name === "list.description") return inProducts(of, "description");
  if (name === "list.declared") return inProducts(of, "declaredText");
  return inputOf(description, name);
}

/** The customer's page is worked out on the sheet with our costs; only the quantities are typed there as they are shown. */
const ofQuote = ({ name, of }: NamedFigure): Origin | undefined =>
  name.startsWith("offer.bottles.")
    ? {
        in: "sheet",
        label: of,
        rule: { kind: "whole number", min: 1, max: 10_000_000 },
      }
    : undefined;

const inProducts = (product: string, column: string): Origin => ({
  in: "table",
  table: "products",
  column,
  row: { product },
});

const price = (product: string, channel: string): Origin => ({
  in: "table",
  table: "prices",
  column: "price",
  row: { product, channel },
  newestBy: "validFrom",
});

const bulkPrice = (kind: string): Origin => ({
  in: "table",
  table: "bulkPrices",
  column: "pricePerPound",
  row: { syrupKind: kind },
  newestBy: "validFrom",
});

/** An input of the sheet, known there by its label. */
function inputOf(
  { blocks }: SheetDescription,
  name: string,
): Origin | undefined {
  for (const block of blocks)
    if (block.kind === "lines")
      for (const line of block.lines)
        if (line.name === name && line.role === "input")
          return {
            in: "sheet",
            label: line.label,
            ...(line.rule ? { rule: line.rule } : {}),
          };
  return undefined;
}
