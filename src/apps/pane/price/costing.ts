import type { CellPlace, Host } from "../../../hosts/host";
import {
  costingNames,
  type CostingKey,
  type NamedPlace,
} from "../../../sheets/costing/names";
import type { DefinedName, Stored } from "../../../sheets/workbook";

export interface Figure {
  readonly value: Stored;
  readonly place: CellPlace;
}

export interface PartOfCost {
  readonly name: string;
  readonly perBottle: Stored;
}

export interface ChannelPrice {
  readonly channel: string;
  readonly price: Stored;
  readonly margin: Stored;
  readonly goal: Stored;
  readonly markup: Stored;
  readonly goalPrice: Stored;
  readonly verdict: string;
  /** The margin once the channel's own fees, marketing and returns are paid; the verdict goes by it. */
  readonly kept: Stored;
}

/** Only emphasis follows from this; the words are the sheet's own. */
export const isShort = ({ verdict }: ChannelPrice): boolean =>
  /under its goal|loses money/i.test(verdict);

export interface Check {
  readonly what: string;
  readonly says: string;
}

/** A margin over the goal and yet short: what the channel takes makes the difference, and that must be said. */
export const isShortByFees = (channel: ChannelPrice): boolean =>
  isShort(channel) &&
  typeof channel.margin === "number" &&
  typeof channel.goal === "number" &&
  channel.margin >= channel.goal;

/** A costing sheet as its cells now stand. */
export interface Costing {
  readonly product: string;
  readonly sheet: string;
  readonly figure: Partial<Readonly<Record<CostingKey, Figure>>>;
  readonly parts: readonly PartOfCost[];
  readonly channels: readonly ChannelPrice[];
  /** Only what does not hold. */
  readonly checks: readonly Check[];
}

/** Reads a product's costing sheet with one look at its cells; undefined when the workbook has none. */
export async function readCosting(
  host: Pick<Host, "readArea">,
  names: readonly DefinedName[],
  product: string,
): Promise<Costing | undefined> {
  const places = costingNames(names, product);
  const known = Object.entries(places) as [CostingKey, NamedPlace][];
  const sheet = places.full_replacement?.sheet ?? known[0]?.[1].sheet;
  if (sheet === undefined) return undefined;
  const own = known.filter(([, place]) => place.sheet === sheet);
  const cellsOf = await readTogether(
    host,
    sheet,
    own.map(([, place]) => place),
  );
  const figure: Partial<Record<CostingKey, Figure>> = {};
  for (const [key, place] of own)
    figure[key] = {
      value: cellsOf(place)[0]?.[0] ?? null,
      place: { sheet, row: place.row, column: place.column },
    };
  return {
    product,
    sheet,
    figure,
    parts: rowsOf(places.parts, cellsOf).map(([name, value]) => ({
      name: text(name),
      perBottle: value ?? null,
    })),
    channels: rowsOf(places.channels, cellsOf).map(channelOf),
    checks: rowsOf(places.checks, cellsOf)
      .map(([what, says]) => ({ what: text(what), says: text(says) }))
      .filter(({ says }) => says !== "" && says.toLowerCase() !== "ok"),
  };
}

type CellsOf = (place: NamedPlace) => readonly (readonly Stored[])[];

/** One request for the rectangle around all places, however far apart they stand. */
async function readTogether(
  host: Pick<Host, "readArea">,
  sheet: string,
  places: readonly NamedPlace[],
): Promise<CellsOf> {
  const top = Math.min(...places.map((p) => p.row));
  const left = Math.min(...places.map((p) => p.column));
  const bottom = Math.max(...places.map((p) => p.row + p.rows));
  const right = Math.max(...places.map((p) => p.column + p.columns));
  const cells = await host.readArea(
    sheet,
    top,
    left,
    bottom - top,
    right - left,
  );
  return ({ row, column, rows, columns }) =>
    cells
      .slice(row - top, row - top + rows)
      .map((line) => line.slice(column - left, column - left + columns));
}

/** Rows whose first cell says what they are; spare rows of the sheet stay out. */
const rowsOf = (
  place: NamedPlace | undefined,
  cellsOf: CellsOf,
): readonly (readonly Stored[])[] =>
  place ? cellsOf(place).filter(([first]) => text(first) !== "") : [];

const channelOf = ([
  channel,
  price,
  margin,
  goal,
  markup,
  goalPrice,
  verdict,
  kept,
]: readonly Stored[]): ChannelPrice => ({
  channel: text(channel),
  price: price ?? null,
  margin: margin ?? null,
  goal: goal ?? null,
  markup: markup ?? null,
  goalPrice: goalPrice ?? null,
  verdict: text(verdict),
  kept: kept ?? null,
});

const text = (value: Stored | undefined): string => {
  if (value === null || value === undefined) return "";
  return typeof value === "object" ? value.error : String(value).trim();
};
