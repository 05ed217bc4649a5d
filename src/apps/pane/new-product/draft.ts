import type { TableContents } from "../../../hosts/host";
import { tableRows, type TableRow } from "../table-rows";
import { slots, productFields, type ProductField, type SlotKey } from "./slots";
import { bookTables } from "../../../book/book";

/** What the form holds, all as typed. */
export interface Draft {
  readonly fields: Readonly<Record<ProductField, string>>;
  readonly parts: Readonly<
    Record<SlotKey, { readonly part: string; readonly quantity: string }>
  >;
  /** Price by channel; blank = only the price for the goal is wanted. */
  readonly prices: Readonly<Record<string, string>>;
  readonly pricesFrom: string;
  readonly bottles: string;
  /** The product of the book whose packing was taken over. */
  readonly like?: string;
}

export function emptyDraft(pricesFrom: string): Draft {
  const parts = slots.map(({ key, quantity }) => [key, { part: "", quantity }]);
  return {
    fields: {
      ...(Object.fromEntries(productFields.map((f) => [f, ""])) as Record<
        ProductField,
        string
      >),
      organic: "no",
      labelOwner: "own",
    },
    parts: Object.fromEntries(parts) as Draft["parts"],
    prices: {},
    pricesFrom,
    bottles: "1,200",
  };
}

/** Products already in the book that use a container, the most alike choice for a new one's other parts. */
export function productsIn(
  tables: readonly TableContents[],
  container: string,
): readonly string[] {
  return tableRows(tables, "ProductMaterials")
    .filter((row) => row.text("Part") === container)
    .map((row) => row.text("Product"));
}

/** Everything about packing taken over from a product of the book; its own code, names, barcodes and prices are not. */
export function packedLike(
  draft: Draft,
  tables: readonly TableContents[],
  product: string,
): Draft {
  const row = tableRows(tables, "Products").find(
    (r) => r.text("Product") === product,
  );
  if (!row) return draft;
  const taken = Object.fromEntries(
    packingFields.map((field) => [field, typed(row, field)]),
  );
  return {
    ...draft,
    fields: { ...draft.fields, ...taken },
    parts: partsOf(tables, product),
  };
}

const packingFields: readonly ProductField[] = [
  "family",
  "syrupKind",
  "declaredText",
  "declared",
  "fill",
  "fillTime",
  "emptyBottle",
  "bottlesPerCase",
  "casesPerLayer",
  "layersPerPallet",
  "usualLine",
];

function typed(row: TableRow, field: ProductField): string {
  const value = row.at(bookTables.products.columns[field].heading);
  return value === null || typeof value === "object" ? "" : String(value);
}

/** A product's own materials, each in the first slot that fits it and is still free. */
function partsOf(
  tables: readonly TableContents[],
  product: string,
): Draft["parts"] {
  const kindOf = new Map(
    tableRows(tables, "Parts").map((r) => [r.text("Part"), r.text("Kind")]),
  );
  const left = tableRows(tables, "ProductMaterials").filter(
    (r) => r.text("Product") === product,
  );
  const filled = slots.map((slot) => {
    const at = left.findIndex(
      (row) =>
        row.text("Per") === slot.per &&
        (slot.kinds as readonly string[]).includes(
          kindOf.get(row.text("Part")) ?? "",
        ),
    );
    const [row] = at < 0 ? [] : left.splice(at, 1);
    return [
      slot.key,
      row
        ? { part: row.text("Part"), quantity: row.text("Quantity") }
        : { part: "", quantity: slot.quantity },
    ];
  });
  return Object.fromEntries(filled) as Draft["parts"];
}
