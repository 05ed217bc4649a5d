import { unusable } from "../../measures/cannot-answer";
import { bookColumn } from "../book-cells";
import { inBooksGallon } from "../books-gallon";
import { figureNames } from "../named-figures";
import { fixedAddress, sheetReference } from "../address";
import type { Contents } from "../../book/contents";
import type { SheetDescription } from "../model";
import { place, type PlacedSheet } from "../place";
import type { DefinedName, Sheet } from "../workbook";
import type { Reference } from "./columns";
import { describeContracts } from "./contracts-sheet";
import { type ToteFacts, toteFacts } from "./facts";
import { LOT_COLUMNS } from "./lots-blocks";
import { describeLots } from "./lots-sheet";
import { TOTES, toteSheetNames, type ToteSheet } from "./names";
import { describeOwed } from "./owed-sheet";
import { describeRegister } from "./register-sheet";
import { type Printing, toPrint } from "./print";
import { describeStatement } from "./statement-sheet";
import { TICKET_COLUMNS } from "./tickets-block";

export interface ToteSheetsQuestion {
  /** The book's tables as they stand. */
  readonly contents: readonly Contents[];
  readonly existingSheets: readonly string[];
  /** Only plain worksheet functions: opens anywhere. */
  readonly portable?: boolean;
  /** Another day than the newest of the book. */
  readonly asOf?: number;
}

export interface ToteSheets {
  /** In the order they stand in. */
  readonly sheets: readonly Sheet[];
  readonly names: readonly DefinedName[];
  /** The sheets with their places, for a copy that leaves the house. */
  readonly placed: Placed;
}

type References = Readonly<Record<ToteSheet, Reference>>;
type Placed = Readonly<Record<ToteSheet, PlacedSheet>>;

/**
 * The tote register with its contracts, accounts, statement and lot balance: live formulas into the book's tables.
 * Refuses (#VALUE!) a workbook without the tables, and one that has such sheets.
 */
export function toteSheets(question: ToteSheetsQuestion): ToteSheets {
  const { contents, existingSheets, portable = false, asOf } = question;
  for (const name of Object.values(toteSheetNames)) {
    const taken = existingSheets.find(
      (one) => one.toLowerCase() === name.toLowerCase(),
    );
    if (taken !== undefined)
      throw unusable(
        `The sheet "${taken}" exists; rename or delete it before building a new one`,
      );
  }
  const facts = toteFacts(contents, asOf);
  const buyers = [
    ...new Set(
      bookColumn(contents, "invoices", "customer")
        .map((cell) => String(cell ?? "").trim())
        .filter((name) => name !== ""),
    ),
  ];
  const describe = (of: References) => described(facts, contents, buyers, of);
  // Each sheet refers to the others; where things stand does not depend on what their formulas say.
  const nothing = referencesTo(undefined);
  const draft = placed(describe(nothing), false);
  const sheets = placed(describe(referencesTo(draft)), portable);
  return {
    sheets: Object.values(sheets).map(({ sheet }) => sheet),
    names: names(sheets, facts),
    placed: sheets,
  };
}

const described = (
  facts: ToteFacts,
  contents: readonly Contents[],
  accounts: readonly string[],
  of: References,
): Readonly<Record<ToteSheet, SheetDescription>> => ({
  register: inBooksGallon(describeRegister(facts, of), contents),
  contracts: describeContracts(facts, of.register),
  owed: describeOwed(facts, of),
  statement: describeStatement(facts, { ...of, accounts }),
  lots: describeLots(facts, of.register, contents),
});

const each = <T, U>(
  all: Readonly<Record<ToteSheet, T>>,
  make: (one: T, key: ToteSheet) => U,
): Readonly<Record<ToteSheet, U>> =>
  Object.fromEntries(
    Object.entries(all).map(([key, one]) => [key, make(one, key as ToteSheet)]),
  ) as Record<ToteSheet, U>;

const placed = (
  descriptions: Readonly<Record<ToteSheet, SheetDescription>>,
  portable: boolean,
): Placed =>
  each(descriptions, (one, key) =>
    toPrint(place(one, { portable }), printing[key]),
  );

/** A sheet of several tables repeats its title: one table's headings over another would mislead. */
const printing: Readonly<Record<ToteSheet, Printing>> = {
  register: { columns: TICKET_COLUMNS, repeats: "tickets" },
  contracts: { columns: 14 },
  owed: { columns: 13, stopsAt: "entries" },
  statement: { columns: 7, repeats: "statement" },
  lots: { columns: LOT_COLUMNS, repeats: "lots", stopsAt: "overdraws" },
};

/** Text that refers to a place of each sheet from any other; without sheets, a stand-in while they are laid out. */
const referencesTo = (sheets: Placed | undefined): References =>
  each(toteSheetNames, (name, key) => (place: string): string => {
    if (!sheets) return "0";
    const area = sheets[key].places.get(place);
    if (!area) throw new Error(`No cell of ${name} is called "${place}"`);
    const from = fixedAddress(area.row, area.column);
    return `${sheetReference(name)}!${
      area.rows === 1 && area.columns === 1
        ? from
        : `${from}:${fixedAddress(area.row + area.rows - 1, area.column + area.columns - 1)}`
    }`;
  });

const names = (sheets: Placed, facts: ToteFacts): readonly DefinedName[] => [
  ...figureNames(TOTES, sheets.register, {
    as_of: "as_of",
    matching: "matching",
    glance: ["went_out.label", "long_enough"],
    money: "money",
    tickets: "tickets",
    disputes: "disputes",
  }),
  ...figureNames(TOTES, sheets.contracts, {
    contracts: "contracts",
    freight: "freight",
  }),
  ...figureNames(TOTES, sheets.owed, {
    accounts: "accounts",
    invoices: "invoices",
    receipts: "receipts",
  }),
  ...figureNames(TOTES, sheets.statement, {
    statement_buyer: "buyer",
    statement_money: "money",
    statement: "statement",
  }),
  ...figureNames(TOTES, sheets.lots, {
    closes: ["bought.label", "unexplained"],
    lots: "lots",
    overdraws: "overdraws",
  }),
  ...(facts.barrels > 0
    ? figureNames(TOTES, sheets.lots, { barrels: "barrels" })
    : []),
];
