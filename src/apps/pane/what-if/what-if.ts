import type { CellPlace, Host } from "../../../hosts/host";
import type { NamedPlace } from "../../../sheets/costing/names";
import { moveColumns, STEPS } from "../../../sheets/what-if/moves-block";
import { type WhatIfKey, whatIfNames } from "../../../sheets/what-if/names";
import type { DefinedName, Stored } from "../../../sheets/workbook";

/** The inputs of the sheet that the pane turns. */
export const turned = [
  "bulk",
  "wages",
  "containers",
  "channel",
  "drawn",
] as const satisfies readonly WhatIfKey[];

export type Turned = (typeof turned)[number];

export interface Moved {
  readonly product: string;
  readonly channel: string;
  readonly price: Stored;
  readonly left: Stored;
  readonly goal: Stored;
  readonly cost: Stored;
  readonly newCost: Stored;
  readonly share: Stored;
  readonly isOver: boolean;
  readonly holdMoney: Stored;
  readonly holdPercent: Stored;
  readonly askMoney: Stored;
  readonly askPercent: Stored;
  readonly newLeft: Stored;
  readonly verdict: string;
  /** What is left of the price at each step of bulk. */
  readonly steps: readonly Stored[];
}

export interface WhatIf {
  readonly sheet: string;
  readonly inputs: Readonly<
    Record<Turned, { readonly value: Stored; readonly place: CellPlace }>
  >;
  readonly glance: readonly { readonly what: string; readonly says: string }[];
  /** Bulk's move at each step. */
  readonly steps: readonly Stored[];
  readonly products: readonly Moved[];
}

/** Reads the what-if sheet as its cells stand; undefined when the workbook has none. */
export async function readWhatIf(
  host: Pick<Host, "readArea">,
  names: readonly DefinedName[],
): Promise<WhatIf | undefined> {
  const places = whatIfNames(names);
  const { moves, steps, glance } = places;
  if (!moves || !steps || !glance) return undefined;
  const read = (place: NamedPlace, columns = place.columns) =>
    host.readArea(place.sheet, place.row, place.column, place.rows, columns);
  const [rows, stepRow, told, ...values] = await Promise.all([
    read(moves, moveColumns.length + STEPS.length),
    read(steps),
    read(glance, 2),
    ...turned.map(async (key) => {
      const place = places[key];
      return place ? read(place) : [];
    }),
  ]);
  return {
    sheet: moves.sheet,
    inputs: Object.fromEntries(
      turned.map((key, i) => [
        key,
        {
          value: values[i]?.[0]?.[0] ?? null,
          place: {
            sheet: moves.sheet,
            row: places[key]?.row ?? 0,
            column: places[key]?.column ?? 0,
          },
        },
      ]),
    ) as unknown as WhatIf["inputs"],
    glance: told.map(([what, says]) => ({
      what: text(what),
      says: text(says),
    })),
    steps: stepRow[0]?.slice(moveColumns.length) ?? [],
    products: rows.filter(([first]) => text(first) !== "").map(moved),
  };
}

function moved(row: readonly Stored[]): Moved {
  const at = (name: (typeof moveColumns)[number]): Stored =>
    row[moveColumns.indexOf(name)] ?? null;
  return {
    product: text(at("product")),
    channel: text(at("channel")),
    price: at("price"),
    left: at("left"),
    goal: at("goal"),
    cost: at("cost"),
    newCost: at("new_cost"),
    share: at("share"),
    isOver: at("over") === "yes",
    holdMoney: at("hold_money"),
    holdPercent: at("hold_percent"),
    askMoney: at("ask_money"),
    askPercent: at("ask_percent"),
    newLeft: at("new_left"),
    verdict: text(at("verdict")),
    steps: row.slice(moveColumns.length),
  };
}

const text = (value: Stored | undefined): string => {
  if (value === null || value === undefined) return "";
  return typeof value === "object" ? value.error : String(value).trim();
};
