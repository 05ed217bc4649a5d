import type { SaleBasis } from "../trade/totes/sale-amount";
import type { BookRow } from "./book";

type Wording = BookRow<"toteContracts">["basis"];

/** What a contract's price basis says, taken apart: the money, and what it is for. */
export const priceBases = {
  "USD per lb": { currency: "USD", basis: "per lb" },
  "USD per gallon": { currency: "USD", basis: "per gal" },
  "USD per lb of syrup at 66.0 Brix": {
    currency: "USD",
    basis: "per lb at 66",
  },
  "CAD per kg": { currency: "CAD", basis: "per kg" },
} as const satisfies Readonly<
  Record<Wording, { readonly currency: string; readonly basis: SaleBasis }>
>;
