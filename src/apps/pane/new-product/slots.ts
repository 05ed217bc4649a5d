import type { bookTables } from "../../../book/book";
import type { packingTerms } from "../../../terms/book-packing";

export type PartKind = (typeof packingTerms.partKind.choices)[number];
export type Per = (typeof packingTerms.per.choices)[number];

/** A place for a part on a product: what sorts of part fit there and what its quantity counts for. */
export interface Slot {
  readonly key: string;
  readonly label: string;
  readonly kinds: readonly PartKind[];
  readonly per: Per;
  readonly quantity: string;
  readonly needed?: true;
  /** The quantity is a choice of the person, not simply one. */
  readonly asksQuantity?: true;
}

export const slots = [
  {
    key: "container",
    label: "Container",
    kinds: ["container"],
    per: "bottle",
    quantity: "1",
    needed: true,
  },
  {
    key: "closure",
    label: "Closure",
    kinds: ["closure"],
    per: "bottle",
    quantity: "1",
  },
  { key: "band", label: "Band", kinds: ["band"], per: "bottle", quantity: "1" },
  {
    key: "front",
    label: "Label",
    kinds: ["label"],
    per: "bottle",
    quantity: "1",
  },
  {
    key: "back",
    label: "Second label",
    kinds: ["label"],
    per: "bottle",
    quantity: "1",
  },
  {
    key: "third",
    label: "Third label",
    kinds: ["label"],
    per: "bottle",
    quantity: "1",
  },
  {
    key: "ink",
    label: "Code on the bottle",
    kinds: ["ink"],
    per: "bottle",
    quantity: "1",
  },
  {
    key: "added",
    label: "Added to the syrup",
    kinds: ["ingredient"],
    per: "US gallon of syrup",
    quantity: "",
    asksQuantity: true,
  },
  {
    key: "case",
    label: "Case",
    kinds: ["case"],
    per: "case",
    quantity: "1",
    needed: true,
  },
  {
    key: "caseLabel",
    label: "Case label",
    kinds: ["case label"],
    per: "case",
    quantity: "2",
    asksQuantity: true,
  },
  {
    key: "pallet",
    label: "Pallet",
    kinds: ["pallet"],
    per: "pallet",
    quantity: "1",
  },
  {
    key: "wrap",
    label: "Pallet wrap",
    kinds: ["pallet", "other"],
    per: "pallet",
    quantity: "1",
  },
] as const satisfies readonly Slot[];

export type SlotKey = (typeof slots)[number]["key"];

/** The columns of Products that a person fills in, in the order of the form. */
export const productFields = [
  "product",
  "description",
  "family",
  "labelOwner",
  "syrupKind",
  "organic",
  "declaredText",
  "declared",
  "fill",
  "fillTime",
  "emptyBottle",
  "bottlesPerCase",
  "casesPerLayer",
  "layersPerPallet",
  "usualLine",
  "bottleBarcode",
  "caseBarcode",
] as const satisfies readonly (keyof typeof bookTables.products.columns)[];

export type ProductField = (typeof productFields)[number];
