import { fixedAddress, sheetReference } from "../address";
import { ownOverheadsAs } from "../costing/season-before";
import type { ChartDescription, SheetDescription } from "../model";
import { place, type PlacedSheet } from "../place";
import {
  type PriceListSheets,
  refuseExisting,
} from "../prices/price-list-sheets";
import type { DefinedName, Sheet } from "../workbook";
import { movedGlanceBlock, whatMovesBlock } from "./input-blocks";
import { movesBlock, pictureBlock, stepsBlock } from "./moves-block";
import { WHAT_IF, type WhatIfKey, whatIfKeys, whatIfName } from "./names";

/**
 * What a move of bulk, wages or glass does to every product and its price; it reads the price list of the same
 * workbook. The line stays the one chosen today. Refuses (#VALUE!) a workbook that has such a sheet.
 */
export function whatIfSheet(
  prices: PriceListSheets,
  how: {
    readonly existingSheets: readonly string[];
    readonly portable?: boolean;
    /** The product drawn first. */
    readonly drawn?: string;
  },
): { readonly sheet: Sheet; readonly names: readonly DefinedName[] } {
  refuseExisting(how.existingSheets, WHAT_IF);
  const placed = place(describe(prices, how.drawn), {
    portable: how.portable === true,
  });
  return {
    sheet: placed.sheet,
    names: whatIfKeys.map((key) => ({
      name: whatIfName(key),
      refersTo: `${sheetReference(WHAT_IF)}!${areaOf(placed, key)}`,
    })),
  };
}

const marginChart: ChartDescription = {
  kind: "lines",
  title: "Left of the price when bulk moves",
  says: "What is left of the price of the product in the picture after all costs, at nine prices of bulk, against its goal.",
  categories: "{picture.bulk}",
  series: [
    { name: "left of the price", values: "{picture.left}", color: "#8a5a2b" },
    { name: "goal", values: "{picture.goal}", color: "#5b7a8c" },
  ],
  unit: "of the price",
  format: "0%",
  beside: "picture",
  rows: 14,
  columns: 8,
};

function describe(
  { reference, listReference, facts }: PriceListSheets,
  drawn: string | undefined,
): SheetDescription {
  return {
    name: WHAT_IF,
    tabColor: "#5b7a8c",
    widths: [34, 22, 12, 10, 9, 12, 12, 10, 10, 10, 13, 13, 13, 13, 13, 22],
    frozenRows: 1,
    charts: [marginChart],
    print: {
      paper: "letter",
      landscape: true,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
      foot: "What if",
    },
    blocks: [
      {
        kind: "title",
        content: {
          formula:
            '="What if bulk moves by "&TEXT({bulk},"+0.00;-0.00;0.00")&" a pound"',
        },
      },
      {
        kind: "notes",
        lines: [
          "Yellow cells are yours to change. The price list stays as it is; each product stays on the line it is cheapest on today, at its usual run.",
          "A price holds the money when a bottle leaves as many cents as now, and the percent when it leaves the same share of the price.",
        ],
      },
      whatMovesBlock({
        channels: facts.channels.map(({ name }) => name),
        products: listReference("list.product"),
        drawn: drawn ?? facts.firstProduct,
      }),
      facts.rolled
        ? {
            ...movedGlanceBlock,
            lines: [
              ...movedGlanceBlock.lines,
              ownOverheadsAs(listReference("own_overheads")),
            ],
          }
        : movedGlanceBlock,
      pictureBlock,
      { kind: "notes", lines: ["", "", ""] },
      stepsBlock,
      movesBlock({
        rows: facts.rows,
        channelRows: facts.channelRows,
        channels: facts.channels,
        working: reference,
        list: listReference,
      }),
    ],
  };
}

function areaOf({ places }: PlacedSheet, key: WhatIfKey): string {
  const [first, last] =
    key === "glance" ? ["falling.label", "moving"] : [key, key];
  const from = places.get(first ?? "");
  const to = places.get(last ?? "");
  if (!from || !to) throw new Error(`The sheet has no "${key}"`);
  const corner = fixedAddress(from.row, from.column);
  const end = fixedAddress(to.row + to.rows - 1, to.column + to.columns - 1);
  return corner === end ? corner : `${corner}:${end}`;
}
