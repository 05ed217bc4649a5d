import { unusable } from "../../measures/cannot-answer";
import { fixedAddress, sheetReference } from "../address";
import type { SheetDescription } from "../model";
import { place, type PlacedSheet } from "../place";
import type { Area, DefinedName, Sheet } from "../workbook";
import {
  type PriceListFacts,
  priceListFacts,
  type PriceListQuestion,
} from "./facts";
import {
  bulkBlock,
  glanceBlock,
  inputsBlock,
  underBlock,
  type Working,
} from "./list-blocks";
import { listBlock } from "./list-columns";
import {
  PRICE_LIST,
  PRICE_WORKING,
  priceListKeys,
  priceListName,
  type PriceListKey,
} from "./names";
import { describeWorking } from "./working-sheet";

/** How many products under their goal are listed at the top; the rest are counted and flagged in their rows. */
const MOST_UNDER = 40;

export interface PriceListSheets {
  readonly list: Sheet;
  readonly working: Sheet;
  readonly names: readonly DefinedName[];
  /** A figure of the working sheet as another sheet refers to it. */
  readonly reference: Working;
  /** The same for a figure of the list. */
  readonly listReference: Working;
  readonly facts: PriceListFacts;
  readonly placed: PlacedSheet;
}

/**
 * The price list of every product and the sheet it is worked out on: live formulas into the book's tables.
 * Refuses (#VALUE!) a workbook without the tables, and one that has such sheets.
 */
export function priceListSheets(question: PriceListQuestion): PriceListSheets {
  const { existingSheets, portable = false } = question;
  for (const name of [PRICE_LIST, PRICE_WORKING])
    refuseExisting(existingSheets, name);
  const facts = priceListFacts(question);
  // Each sheet refers to the other; where things stand does not depend on what their formulas say.
  const draft = place(
    describeList(facts, () => "0"),
    { portable: false },
  );
  const inputs = referenceTo(PRICE_LIST, draft);
  const working = place(
    describeWorking(facts, {
      asOf: inputs("as_of"),
      loss: inputs("loss"),
      ending: inputs("ending"),
      runs: inputs("list.bottles"),
    }),
    { portable },
  );
  const reference = referenceTo(PRICE_WORKING, working);
  const list = place(describeList(facts, reference), { portable });
  return {
    list: list.sheet,
    working: working.sheet,
    names: names(list),
    reference,
    listReference: referenceTo(PRICE_LIST, list),
    facts,
    placed: list,
  };
}

/** Refuses a sheet that exists, in any case of letters. */
export function refuseExisting(
  existing: readonly string[],
  name: string,
): void {
  const taken = existing.find((s) => s.toLowerCase() === name.toLowerCase());
  if (taken !== undefined)
    throw unusable(
      `The sheet "${taken}" exists; rename or delete it before building a new one`,
    );
}

const describeList = (facts: PriceListFacts, w: Working): SheetDescription => ({
  name: PRICE_LIST,
  tabColor: "#b06a2c",
  widths: [
    32, 30, 24, 13, 16, 13, 13, 11, 13, 11, 13, 13, 13, 12, 11, 11, 22, 13, 9,
    10, 30, 22, 40, 9,
  ],
  frozenRows: 1,
  print: {
    paper: "letter",
    landscape: true,
    fit: "one page wide",
    across: 4,
    headings: { first: 0, rows: 1 },
    foot: "Price list",
  },
  blocks: [
    {
      kind: "title",
      content: { formula: '="Price list on "&TEXT({as_of},"yyyy-mm-dd")' },
    },
    {
      kind: "notes",
      lines: [
        "Yellow cells are yours to change; everything else follows from them and from the tables of this book. Margin is on price, markup on cost, both on the full cost at today's bulk price.",
      ],
    },
    glanceBlock(facts, w),
    underBlock(Math.min(facts.rows, MOST_UNDER), w),
    inputsBlock(facts),
    bulkBlock(facts),
    listBlock(facts, w),
  ],
});

/** Text that refers to a place of a sheet from any other; "first..last" is all from one to another. */
export const referenceTo =
  (sheet: string, { places }: PlacedSheet): Working =>
  (name) => {
    const [first = "", last = first] = name.split("..");
    return `${sheetReference(sheet)}!${area(around(placeOf(places, first), placeOf(places, last)))}`;
  };

const around = (from: Area, to: Area): Area => ({
  row: from.row,
  column: from.column,
  rows: to.row + to.rows - from.row,
  columns: to.column + to.columns - from.column,
});

function area({ row, column, rows, columns }: Area): string {
  const from = fixedAddress(row, column);
  return rows === 1 && columns === 1
    ? from
    : `${from}:${fixedAddress(row + rows - 1, column + columns - 1)}`;
}

function placeOf(places: ReadonlyMap<string, Area>, name: string): Area {
  const found = places.get(name);
  if (!found) throw new Error(`No cell is called "${name}"`);
  return found;
}

/** Which placed cells each public name stands for. */
const sources: Readonly<Record<PriceListKey, readonly [string, string]>> = {
  as_of: ["as_of", "as_of"],
  glance: ["under_count.label", "kink_count"],
  checks: ["long_enough.label", "channels_stand"],
  under: ["under", "under"],
  list: ["list", "list"],
  channels: ["list", "list"],
};

function names(list: PlacedSheet): readonly DefinedName[] {
  return priceListKeys.map((key) => {
    const [first, last] = sources[key];
    const whole = around(
      placeOf(list.places, first),
      placeOf(list.places, last),
    );
    // The headings of the list name the channels.
    const named =
      key === "channels" ? { ...whole, row: whole.row - 1, rows: 1 } : whole;
    return {
      name: priceListName(key),
      refersTo: `${sheetReference(PRICE_LIST)}!${area(named)}`,
    };
  });
}
