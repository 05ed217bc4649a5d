import type { CellPlace, Host } from "../../../hosts/host";
import type { NamedPlace } from "../../../sheets/costing/names";
import { listColumns } from "../../../sheets/prices/list-columns";
import { priceListNames } from "../../../sheets/prices/names";
import type { DefinedName, Stored } from "../../../sheets/workbook";

/** A product as the price list has it. */
export interface ListedProduct {
  readonly product: string;
  readonly description: string;
  readonly full: Stored;
  readonly average: Stored;
  readonly oldest: Stored;
  readonly direct: Stored;
  /** The channel it stands worst in, what is left of the price there, and the goal. */
  readonly worst: string;
  readonly left: Stored;
  readonly goal: Stored;
  readonly isUnder: boolean;
  /** Channels it is under its goal in. */
  readonly under: readonly string[];
  readonly belowCost: readonly string[];
  readonly flags: string;
  readonly place: CellPlace;
}

export interface ListedPrices {
  readonly sheet: string;
  readonly asOf: Stored;
  readonly glance: readonly { readonly what: string; readonly says: string }[];
  /** Only what does not hold. */
  readonly checks: readonly { readonly what: string; readonly says: string }[];
  /** Furthest under its goal first, then the rest in the list's order. */
  readonly products: readonly ListedProduct[];
}

/** Reads the price list as its cells stand; undefined when the workbook has none. */
export async function readPriceList(
  host: Pick<Host, "readArea">,
  names: readonly DefinedName[],
): Promise<ListedPrices | undefined> {
  const places = priceListNames(names);
  const { list, glance, checks, as_of: asOf } = places;
  if (!list) return undefined;
  const cells = (place: NamedPlace | undefined) =>
    place
      ? host.readArea(
          place.sheet,
          place.row,
          place.column,
          place.rows,
          place.columns,
        )
      : Promise.resolve([]);
  const [rows, atAGlance, checked, day] = await Promise.all([
    cells({ ...list, columns: listColumns.length }),
    cells(glance && { ...glance, columns: 2 }),
    cells(checks && { ...checks, columns: 2 }),
    cells(asOf),
  ]);
  const products = rows.flatMap((row, i) =>
    text(row[0]) === "" ? [] : [listed(row, list, i)],
  );
  const short = (p: ListedProduct): number =>
    typeof p.left === "number" && typeof p.goal === "number"
      ? p.left - p.goal
      : 0;
  return {
    sheet: list.sheet,
    asOf: day[0]?.[0] ?? null,
    glance: told(atAGlance),
    checks: told(checked).filter(({ says }) => says !== "ok"),
    products: [
      ...products
        .filter(({ isUnder }) => isUnder)
        .sort((a, b) => short(a) - short(b)),
      ...products.filter(({ isUnder }) => !isUnder),
    ],
  };
}

function listed(
  row: readonly Stored[],
  { sheet, row: top, column }: NamedPlace,
  index: number,
): ListedProduct {
  const at = (name: (typeof listColumns)[number]): Stored =>
    row[listColumns.indexOf(name)] ?? null;
  return {
    product: text(at("product")),
    description: text(at("description")),
    full: at("full"),
    average: at("average"),
    oldest: at("oldest"),
    direct: at("direct"),
    worst: text(at("worst")),
    left: at("left"),
    goal: at("goal"),
    isUnder: typeof at("short") === "number",
    under: split(at("also")),
    belowCost: split(at("losing")),
    flags: text(at("flags")),
    place: { sheet, row: top + index, column },
  };
}

/** The sheet strings channels together: "Farm counter; Distributor; ". */
const split = (value: Stored): readonly string[] =>
  text(value)
    .split(";")
    .map((part) => part.trim())
    .filter(Boolean);

const told = (rows: readonly (readonly Stored[])[]) =>
  rows.map(([what, says]) => ({
    what: text(what ?? null),
    says: text(says ?? null),
  }));

const text = (value: Stored | undefined): string => {
  if (value === null || value === undefined) return "";
  return typeof value === "object" ? value.error : String(value).trim();
};

/** Products whose code, description or flags hold every word typed, in any order. */
export function listedMatching(
  products: readonly ListedProduct[],
  typed: string,
): readonly ListedProduct[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return products.filter(({ product, description, flags }) => {
    const all = `${product} ${description} ${flags}`.toLowerCase();
    return words.every((word) => all.includes(word));
  });
}
