import type { RowOf, Table } from "./table";
import { bulkPrices } from "./tables/bulk-prices";
import { channels } from "./tables/channels";
import { crew } from "./tables/crew";
import { energy } from "./tables/energy";
import { exchangeRates } from "./tables/exchange-rates";
import { fillChecks } from "./tables/fill-checks";
import { invoices } from "./tables/invoices";
import { lines } from "./tables/lines";
import { lotUse } from "./tables/lot-use";
import { lots } from "./tables/lots";
import { oakBarrels } from "./tables/oak-barrels";
import { overheads } from "./tables/overheads";
import { partPrices } from "./tables/part-prices";
import { parts } from "./tables/parts";
import { payments } from "./tables/payments";
import { prices } from "./tables/prices";
import { productMaterials } from "./tables/product-materials";
import { products } from "./tables/products";
import { runs } from "./tables/runs";
import { seasonTotals } from "./tables/season-totals";
import { settings } from "./tables/settings";
import { stockCount } from "./tables/stock-count";
import { toteContracts } from "./tables/tote-contracts";
import { toteShipments } from "./tables/tote-shipments";
import { wages } from "./tables/wages";

/** Every table of the farm book, in the order of its sheets. */
export const bookTables = {
  settings,
  products,
  productMaterials,
  parts,
  partPrices,
  lots,
  lotUse,
  bulkPrices,
  lines,
  crew,
  wages,
  energy,
  overheads,
  seasonTotals,
  channels,
  prices,
  runs,
  fillChecks,
  oakBarrels,
  toteContracts,
  toteShipments,
  invoices,
  payments,
  exchangeRates,
  stockCount,
} as const;

export type TableKey = keyof typeof bookTables;

/** One row of a table, typed by its declaration. */
export type BookRow<K extends TableKey> = RowOf<(typeof bookTables)[K]>;

/** A farm's whole book as typed rows; quantities are in house units (kg, L, °C, s). */
export type Book = {
  readonly [K in TableKey]: readonly BookRow<K>[];
};

/** The same catalogue with the column types put away, for everything that walks over all tables. */
export const tableList: readonly (readonly [TableKey, Table])[] =
  Object.entries(bookTables) as readonly (readonly [TableKey, Table])[];
