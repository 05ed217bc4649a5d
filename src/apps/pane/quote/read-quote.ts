import type { CellPlace, Host } from "../../../hosts/host";
import type { NamedPlace } from "../../../sheets/costing/names";
import { type QuoteKey, quoteNames } from "../../../sheets/quote/names";
import { tierLabel } from "../../../sheets/quote/result-blocks";
import type { DefinedName, Stored } from "../../../sheets/workbook";

export interface QuoteCell {
  readonly value: Stored;
  readonly place: CellPlace;
}

/** One quantity as the sheet now has it. */
export interface QuotedTier {
  readonly bottles: QuoteCell;
  readonly price: Stored;
  readonly line: Stored;
  readonly full: Stored;
  readonly direct: Stored;
  readonly onDirect: Stored;
  readonly earned: Stored;
  readonly leftValue: Stored;
  readonly artworkEach: Stored;
  readonly backAt: Stored;
  readonly months: Stored;
  /** Parts below their least order, a sentence each. */
  readonly below: readonly string[];
}

/** A quote as its cells now stand. */
export interface ReadQuote {
  readonly product: string;
  /** The customer's page and the sheet with the costs. */
  readonly page: CellPlace;
  readonly working: CellPlace;
  readonly tiers: readonly QuotedTier[];
  readonly cell: Partial<Readonly<Record<QuoteKey, QuoteCell>>>;
  /** Only what does not hold. */
  readonly checks: readonly { readonly what: string; readonly says: string }[];
}

/** Reads a product's quote; undefined when the workbook has none. */
export async function readQuote(
  host: Pick<Host, "readArea">,
  names: readonly DefinedName[],
  product: string,
): Promise<ReadQuote | undefined> {
  const places = quoteNames(names, product);
  const { tiers, quantities, offer } = places;
  if (!tiers || !quantities || !offer) return undefined;
  const cellsOf = (place: NamedPlace) =>
    host.readArea(
      place.sheet,
      place.row,
      place.column,
      place.rows,
      place.columns,
    );
  const keys = Object.entries(places) as [QuoteKey, NamedPlace][];
  const areas = new Map(
    await Promise.all(
      keys
        .filter(([key]) => key !== "offer")
        .map(async ([key, place]) => [key, await cellsOf(place)] as const),
    ),
  );
  const rows = areas.get("tiers") ?? [];
  const row = (name: string): readonly Stored[] =>
    rows.find(([label]) => label === tierLabel(name)) ?? [];
  const figures = {
    price: row("price"),
    line: row("line"),
    full: row("full"),
    direct: row("direct"),
    onDirect: row("on_direct"),
    earned: row("earned"),
    leftValue: row("left_value"),
    artworkEach: row("artwork_each"),
    backAt: row("back_at"),
    months: row("months"),
    below: row("below"),
  };
  return {
    product,
    page: { sheet: offer.sheet, row: 0, column: 0 },
    working: { sheet: tiers.sheet, row: 0, column: 0 },
    tiers: (areas.get("quantities") ?? []).map(([bottles], i) => {
      const at = (cells: readonly Stored[]): Stored => cells[i + 1] ?? null;
      return {
        bottles: {
          value: bottles ?? null,
          place: {
            sheet: quantities.sheet,
            row: quantities.row + i,
            column: quantities.column,
          },
        },
        price: at(figures.price),
        line: at(figures.line),
        full: at(figures.full),
        direct: at(figures.direct),
        onDirect: at(figures.onDirect),
        earned: at(figures.earned),
        leftValue: at(figures.leftValue),
        artworkEach: at(figures.artworkEach),
        backAt: at(figures.backAt),
        months: at(figures.months),
        below: text(at(figures.below)).split(/;\s*/).filter(Boolean),
      };
    }),
    cell: Object.fromEntries(
      keys.map(([key, { sheet, row: r, column }]) => [
        key,
        {
          value: areas.get(key)?.[0]?.[0] ?? null,
          place: { sheet, row: r, column },
        },
      ]),
    ),
    checks: (areas.get("checks") ?? [])
      .map(([what, says]) => ({ what: text(what), says: text(says) }))
      .filter(({ says }) => says !== "" && says !== "ok"),
  };
}

const text = (value: Stored | undefined): string =>
  value === null || value === undefined
    ? ""
    : typeof value === "object"
      ? value.error
      : String(value).trim();
