import type { Host } from "../../../hosts/host";
import {
  type BulkOrBottleKey,
  bulkOrBottleNames,
} from "../../../sheets/bulk-or-bottle/names";
import type { NamedPlace } from "../../../sheets/costing/names";
import type { DefinedName, Stored } from "../../../sheets/workbook";
import type { QuoteCell } from "./read-quote";

/** One way to sell the free syrup in bottles. */
export interface Way {
  readonly channel: string;
  readonly perPound: Stored;
  readonly bottles: Stored;
  readonly more: Stored;
  readonly limit: string;
}

export interface ReadBulk {
  readonly cell: Partial<Readonly<Record<BulkOrBottleKey, QuoteCell>>>;
  readonly ways: readonly Way[];
}

/** Reads the comparison of bulk and bottle as its cells stand; undefined when the workbook has none for the product. */
export async function readBulk(
  host: Pick<Host, "readArea">,
  names: readonly DefinedName[],
  product: string,
): Promise<ReadBulk | undefined> {
  const places = bulkOrBottleNames(names, product);
  if (!places.ways) return undefined;
  const areas = new Map(
    await Promise.all(
      (Object.entries(places) as [BulkOrBottleKey, NamedPlace][]).map(
        async ([key, p]) =>
          [
            key,
            await host.readArea(p.sheet, p.row, p.column, p.rows, p.columns),
          ] as const,
      ),
    ),
  );
  return {
    cell: Object.fromEntries(
      (Object.entries(places) as [BulkOrBottleKey, NamedPlace][]).map(
        ([key, { sheet, row, column }]) => [
          key,
          {
            value: areas.get(key)?.[0]?.[0] ?? null,
            place: { sheet, row, column },
          },
        ],
      ),
    ),
    ways: (areas.get("ways") ?? []).flatMap(
      ([channel, perPound, bottles, , , , , more, limit]) =>
        typeof perPound === "number"
          ? [
              {
                channel: String(channel),
                perPound,
                bottles: bottles ?? null,
                more: more ?? null,
                limit: String(limit ?? ""),
              },
            ]
          : [],
    ),
  };
}
