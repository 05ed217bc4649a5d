import type { Change, TableContents, TableRows } from "../../../hosts/host";
import { as } from "../../../measures/quantity";
import { isoDate } from "../../../measures/read-date";
import type { CellValue } from "../../../sheets/workbook";
import { sentence } from "../sentence";
import { plannedSheet } from "../price/build";
import type { NewRows } from "./read-draft";

/** Everything a new product writes, as one change, and the same said row by row before it happens. */
export interface PlannedProduct {
  readonly change: Change;
  readonly sheet: string;
  readonly writes: readonly {
    readonly what: string;
    readonly rows: readonly string[];
  }[];
}

export function plannedProduct(
  rows: NewRows,
  tables: readonly TableContents[],
  sheets: readonly string[],
): PlannedProduct {
  const append = [
    { table: "Products", rows: rows.products },
    { table: "ProductMaterials", rows: rows.materials },
    { table: "Prices", rows: rows.prices },
  ].filter((added) => added.rows.length > 0);
  const after = append.reduce(
    (all, added) => withRows(all, added.table, added.rows),
    tables,
  );
  const planned = plannedSheet({
    tables: after,
    product: rows.product,
    bottles: rows.bottles,
    sheets,
  });
  return {
    sheet: planned.sheet,
    change: {
      says: `the product ${rows.product} and the sheet “${planned.sheet}”`,
      append,
      addSheets: planned.change.addSheets,
      names: planned.change.names,
    },
    writes: [
      ...append.map((added) => ({
        what: appendedSays(added.table, added.rows.length, tables),
        rows: added.rows.map((row) => rowSays(added.table, row)),
      })),
      { what: sentence(planned.writes.join(" and ")).slice(0, -1), rows: [] },
    ],
  };
}

/** A row as a person checks it: all of a product, a part with its quantity, a price with its day. */
function rowSays(table: string, row: TableRows[number]): string {
  const says = (heading: string): string => shownCell(heading, row[heading]);
  if (table === "ProductMaterials")
    return `${says("Part")}: ${says("Quantity")} per ${says("Per")}`;
  if (table === "Prices")
    return `${says("Channel")}: ${says("Price")} from ${says("Valid from")}`;
  return Object.keys(row)
    .map((heading) => `${heading}: ${says(heading)}`)
    .join("; ");
}

function appendedSays(
  name: string,
  count: number,
  tables: readonly TableContents[],
): string {
  const table = tables.find((t) => t.name === name);
  const rows = count === 1 ? "1 row" : `${count} rows`;
  if (!table) return `${rows} to ${name}`;
  const first = table.row + 1 + table.rows.length + 1;
  const where =
    count === 1 ? `row ${first}` : `rows ${first} to ${first + count - 1}`;
  return `${rows} to “${table.sheet}” (${where})`;
}

const shownCell = (heading: string, value: CellValue | undefined): string =>
  heading === "Valid from" && typeof value === "number"
    ? isoDate(as(value))
    : String(value);

/** The tables as they will be, so that the sheet is laid out for the product it is about. */
function withRows(
  tables: readonly TableContents[],
  name: string,
  rows: TableRows,
): readonly TableContents[] {
  return tables.map((table) =>
    table.name === name
      ? {
          ...table,
          rows: [
            ...table.rows,
            ...rows.map((row) => table.headings.map((h) => row[h] ?? null)),
          ],
        }
      : table,
  );
}
