import { bookTables } from "../../book/book";
import { type Contents, contentsOf } from "../../book/contents";
import { place } from "../place";
import { refuseExisting } from "../prices/price-list-sheets";
import type { SheetDescription } from "../model";
import { type CostingParts, costingParts } from "../quote/costing-parts";
import { placedReference } from "../quote/placed-area";
import { inTier } from "../quote/tier-blocks";
import type { DefinedName, Sheet } from "../workbook";
import {
  bulkOrBottleKeys,
  bulkOrBottleName,
  bulkOrBottleSheetName,
} from "./names";
import { againstBlock, waysBlock } from "./ways-block";

export interface BulkOrBottleSheetQuestion {
  /** The book's tables as they stand. */
  readonly contents: readonly Contents[];
  readonly product: string;
  /** The run a bottle's share of set-up and purge is taken from. */
  readonly bottles: number;
  readonly pounds: number;
  /** Hours of people; undefined: as many as it takes. */
  readonly labour: number | undefined;
  /** What a pound brings in bulk, and where that comes from; undefined where no contract takes this syrup. */
  readonly tote:
    { readonly perPound: number; readonly says: string } | undefined;
  readonly existingSheets: readonly string[];
  readonly portable?: boolean;
}

/**
 * What the next pounds earn bottled in each channel, as far as labour reaches, against selling them in bulk.
 * Refuses (#VALUE!) a product that is not in Products and a sheet that exists.
 */
export function bulkOrBottleSheet(question: BulkOrBottleSheetQuestion): {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
} {
  const { contents, product, existingSheets, portable = false } = question;
  const name = bulkOrBottleSheetName(product);
  refuseExisting(existingSheets, name);
  const parts = costingParts(contents, product, undefined);
  const placed = place(describe(question, name, parts), { portable });
  return {
    sheet: placed.sheet,
    names: bulkOrBottleKeys.map((key) => ({
      name: bulkOrBottleName(product, key),
      refersTo: placedReference(name, placed, key),
    })),
  };
}

function describe(
  { contents, product, ...typed }: BulkOrBottleSheetQuestion,
  name: string,
  parts: CostingParts,
): SheetDescription {
  const channels = contentsOf(contents, bookTables.channels)?.rows.length ?? 0;
  return {
    name,
    tabColor: "#b06a2c",
    widths: [
      42, 18, 18, 18, 18, 18, 18, 18, 24, 16, 14, 14, 14, 14, 14, 12, 40,
    ],
    frozenRows: 1,
    print: {
      paper: "letter",
      landscape: true,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
      foot: `Bulk or bottle: ${product}`,
    },
    blocks: [
      {
        kind: "title",
        content: {
          formula: '="Bulk or bottle: "&{description}&" ("&{product}&")"',
        },
      },
      {
        kind: "notes",
        lines: [
          "Yellow cells are yours to change. The syrup counts at today's price either way; overheads are there anyway and are left out.",
          "Shipping to the buyer is not counted: a channel that pays it earns less than it says here. How many bottles a channel can sell is for you to judge.",
        ],
      },
      {
        kind: "lines",
        title: "What you can change",
        lines: [
          {
            name: "pounds",
            label: "Syrup that is free",
            unit: "lb",
            role: "input",
            format: "#,##0",
            content: typed.pounds,
            rule: { kind: "number", min: 0, max: 10_000_000 },
            ruleSays: "Pounds, 0 or more.",
          },
          {
            name: "labour",
            label: "Labour there is for it",
            unit: "h",
            role: "input",
            format: "#,##0.0",
            content: typed.labour,
            hint: "hours of people: four for a day of 8 h are 32; blank = as many as it takes",
            rule: { kind: "number", min: 0, max: 1_000_000 },
            ruleSays: "Hours of people, 0 or more, or blank.",
          },
          {
            name: "tote_price",
            label: "What a pound brings in bulk",
            unit: "per lb",
            role: "input",
            format: "0.0000",
            content: typed.tote?.perPound,
            hint:
              typed.tote?.says ??
              "no open tote contract takes this syrup: type it",
            rule: { kind: "number", min: 0, max: 100 },
            ruleSays: "Money a pound, 0 or more.",
          },
          {
            name: inTier(1, "bottles"),
            label: "Bottles in a usual run",
            unit: "bottles",
            role: "input",
            format: "#,##0",
            content: typed.bottles,
            hint: "set-up, purge and least orders are shared by these",
            rule: { kind: "whole number", min: 1, max: 10_000_000 },
            ruleSays: "A whole number of bottles, 1 or more.",
          },
          {
            name: "leftovers",
            label: "Leftover labels and containers",
            role: "input",
            content: "charged",
            hint: "charged: they are a cost of the run; kept: they are stock",
            rule: { kind: "list", choices: ["charged", "kept"] },
            ruleSays: "charged or kept.",
          },
          ...parts.inputs,
        ],
      },
      againstBlock,
      waysBlock(channels + 2),
      ...parts.once,
      ...parts.tier(1, ""),
    ],
  };
}
