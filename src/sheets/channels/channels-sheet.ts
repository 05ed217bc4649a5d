import type { Contents } from "../../book/contents";
import { USUAL_SIZES } from "../../book/channel-orders";
import { unusable } from "../../measures/cannot-answer";
import { fixedAddress, sheetReference } from "../address";
import {
  bookColumn,
  bookHas,
  bookRange,
  bookRows,
  needBook,
  refuseSheet,
} from "../book-cells";
import { costingNames, type NamedPlace } from "../costing/names";
import type { ChartDescription } from "../model";
import {
  figureNames,
  figurePlaces,
  inNames,
  sheetNameOf,
  type Sources,
} from "../named-figures";
import { place } from "../place";
import type { DefinedName, Sheet } from "../workbook";
import { askedBlock, type ChannelsAsked, checksBlock } from "./asked-block";
import { chainBlock } from "./chain-block";
import { ordersBlock } from "./orders-block";
import { pictureBlock, sizesBlock, smallOrdersBlock } from "./sizes-blocks";

export interface ChannelsSheetQuestion {
  readonly contents: readonly Contents[];
  readonly product: string;
  /** The workbook's names: the product's costing sheet is found by them. */
  readonly names: readonly DefinedName[];
  readonly existingSheets: readonly string[];
  readonly portable?: boolean;
  readonly sizes?: readonly number[];
  readonly shelf?: number;
  readonly shippingFurther?: number;
  readonly mailer?: number;
  readonly salesTax?: number;
}

const sources = {
  shelf: "shelf",
  further: "further",
  mailer: "mailer",
  tax: "tax",
  drawn: "drawn",
  orders: "orders",
  sizes: "sizes",
  small: "small",
  chain: "chain",
  picture: "picture",
  checks: ["cost_known.label", "long_enough"],
} as const satisfies Sources<string>;

export type ChannelsKey = keyof typeof sources;

/** Where a workbook keeps a product's channels; empty without such a sheet. */
export const channelsPlaces = (
  names: readonly DefinedName[],
  product: string,
): Partial<Readonly<Record<ChannelsKey, NamedPlace>>> =>
  figurePlaces(
    `channels_${inNames(product)}`,
    Object.keys(sources) as ChannelsKey[],
    names,
  );

/**
 * What each channel leaves of a product, order by order, beside its costing sheet.
 * Refuses (#VALUE!) a workbook without the tables or the costing sheet, and one that has such a sheet.
 */
export function channelsSheet(question: ChannelsSheetQuestion): {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
} {
  const { contents, product, existingSheets, portable = false } = question;
  const name = sheetNameOf("Channels", product);
  needBook(contents, "a sheet of channels");
  refuseSheet(existingSheets, name);
  const cost = costingNames(question.names, product);
  const {
    full_replacement: full,
    direct_replacement: direct,
    channels,
    missing,
    full_basis: basis,
  } = cost;
  if (!full || !direct || !channels || !missing)
    throw unusable(
      `There is no costing sheet for ${product}; build it first, as its channels follow from its cost`,
    );
  const asked: ChannelsAsked = {
    product,
    full: referenceTo(full),
    direct: referenceTo(direct),
    missing: referenceTo(missing),
    basis: basis && referenceTo(basis),
    shelf: question.shelf,
    further: question.shippingFurther,
    mailer: question.mailer,
    tax: question.salesTax,
    drawn: firstThatSends(contents),
    channels: bookRange(contents, "channels", "channel"),
  };
  const sizes = question.sizes ?? USUAL_SIZES;
  const rows = bookRows(contents, "channels") + 2;
  const placed = place(
    {
      name,
      tabColor: "#9a7b3f",
      widths: [38, 13, 12, 13, 12, 12, 14, 12, 14, 12, 12, 12, 14, 34, 12, 12],
      frozenRows: 1,
      charts: [orderChart],
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 0, rows: 1 },
        foot: `Channels of ${product}`,
      },
      blocks: [
        { kind: "title", content: `Channels of ${product}` },
        {
          kind: "notes",
          lines: [
            "Yellow cells are yours to change. A fee is taken on the whole order, shipping and sales tax with it where the channel does so.",
          ],
        },
        askedBlock(asked),
        checksBlock(asked),
        ordersBlock(
          rows,
          referenceTo(channels),
          bookHas(contents, "channels", "shippingCharged"),
        ),
        sizesBlock(sizes),
        smallOrdersBlock(rows, sizes),
        chainBlock(chains(contents) + 2),
        pictureBlock,
      ],
    },
    { portable },
  );
  return {
    sheet: placed.sheet,
    names: figureNames(`channels_${inNames(product)}`, placed, sources),
  };
}

const orderChart: ChartDescription = {
  kind: "columns",
  title: "What an order leaves",
  says: "What orders of one bottle to twelve leave in the channel in the picture; below zero an order costs money.",
  categories: "{picture.bottles}",
  series: [{ name: "left", values: "{picture.left}", color: "#9a7b3f" }],
  format: "0",
  beside: "picture",
  rows: 12,
  columns: 6,
};

/** Channels in which a shop keeps a margin. */
const chains = (contents: readonly Contents[]): number =>
  bookColumn(contents, "channels", "buyerMargin").filter(
    (cell) => Number(cell) > 0,
  ).length;

function referenceTo({
  sheet,
  row,
  column,
  rows,
  columns,
}: NamedPlace): string {
  const from = fixedAddress(row, column);
  const to = fixedAddress(row + rows - 1, column + columns - 1);
  return `${sheetReference(sheet)}!${from === to ? from : `${from}:${to}`}`;
}

/** The first channel that sends parcels, else the first of all. */
function firstThatSends(contents: readonly Contents[]): string {
  const names = bookColumn(contents, "channels", "channel").map((cell) =>
    String(cell ?? "").trim(),
  );
  const freight = bookColumn(contents, "channels", "outboundFreight").map(
    Number,
  );
  return names.find((_, i) => (freight[i] ?? 0) > 0) ?? names[0] ?? "";
}
