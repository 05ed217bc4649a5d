import { type BookRow, bookTables, type TableKey } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { sameName } from "../../book/keys";
import { readBook } from "../../book/read";
import { setting } from "../../book/setting";
import { inPounds } from "../../functions/by-weight";
import { answerOrNone, unusable } from "../../measures/cannot-answer";
import { USUAL_TOLERANCE } from "../../trade/totes/weight-difference";
import { bookColumn } from "../book-cells";
import { usGallonsEachFormula } from "../books-gallon";

/** Tables the tote sheets cannot do without. */
export const toteTables = [
  "toteContracts",
  "toteShipments",
  "invoices",
  "payments",
  "lots",
  "lotUse",
] as const satisfies readonly TableKey[];

/** What the sheets are laid out by; everything else they look up themselves. */
export interface ToteFacts {
  readonly tickets: number;
  readonly contracts: number;
  readonly invoices: number;
  readonly receipts: number;
  readonly accounts: number;
  readonly lots: number;
  /** 0 in a book without oak barrels. */
  readonly barrels: number;
  readonly hasCount: boolean;
  readonly hasRuns: boolean;
  /** The day spoken of: a formula, or a day that was asked for. */
  readonly day: string | number;
  /** A whole column of a book table, as "Lots[Net lb]". */
  readonly column: Column;
  /** The same; undefined where a workbook has no such column, which may be left out. */
  readonly columnIfAny: ColumnIfAny;
  /** How far a buyer's weight may lie from ours. */
  readonly tolerance: number;
  /** Pounds on the plate of a tote whose ticket says none; undefined where the farm has not said. */
  readonly plateLimit: number | undefined;
  /** US gallons in one of the book's, as a formula that may have no answer; "1" in most books. */
  readonly gallonsEach: string;
}

export type Column = <K extends TableKey>(
  table: K,
  key: Exclude<keyof BookRow<K> & string, "place">,
) => string;

export type ColumnIfAny = <K extends TableKey>(
  table: K,
  key: Exclude<keyof BookRow<K> & string, "place">,
) => string | undefined;

/** Looks at the book once. Refuses (#VALUE!) a workbook that lacks a table or column the sheets need. */
export function toteFacts(
  contents: readonly Contents[],
  asOf?: number,
): ToteFacts {
  for (const key of toteTables)
    if (!contentsOf(contents, bookTables[key]))
      throw unusable(
        `The workbook has no ${bookTables[key].name} table, and the tote register needs it`,
      );
  const count = (key: TableKey): number =>
    contentsOf(contents, bookTables[key])?.rows.length ?? 0;
  const invoices = withSpare(count("invoices"));
  const settings = contentsOf(contents, bookTables.settings);
  // Its settings alone; none in a workbook that is no farm book.
  const { book: farm } = readBook(settings ? [settings] : []);
  const limit = setting(farm, "Tote plate limit");
  return {
    tickets: withSpare(count("toteShipments")),
    contracts: withSpare(count("toteContracts"), FEW),
    invoices,
    receipts: withSpare(count("payments")),
    accounts: Math.min(invoices, accountsIn(contents) + MORE_ACCOUNTS),
    lots: withSpare(count("lots")),
    barrels: count("oakBarrels") === 0 ? 0 : withSpare(count("oakBarrels")),
    hasCount: count("stockCount") > 0,
    hasRuns: count("runs") > 0,
    day: asOf ?? dayFormula(contents),
    column: (table, key) => columnOf(contents, table, key),
    columnIfAny: (table, key) =>
      answerOrNone(() => columnOf(contents, table, key)),
    tolerance: setting(farm, "Weight tolerance") ?? USUAL_TOLERANCE,
    plateLimit: limit === undefined ? undefined : inPounds(limit),
    gallonsEach: usGallonsEachFormula(contents),
  };
}

/** Rows for buyers that come later; a check says when there are more. */
const MORE_ACCOUNTS = 8;

/** Buyers, each money counted by itself. */
function accountsIn(contents: readonly Contents[]): number {
  const moneys = bookColumn(contents, "invoices", "currency");
  return new Set(
    bookColumn(contents, "invoices", "customer").map((buyer, i) =>
      sameName(`${String(buyer)}|${String(moneys[i])}`),
    ),
  ).size;
}

/** The book's newest day. A workbook that is no farm book has no Settings, and may hold no date at all. */
function dayFormula(contents: readonly Contents[]): string {
  if (contentsOf(contents, bookTables.settings))
    return newestDayFormula(contents);
  const dates = [
    columnOf(contents, "toteShipments", "shipped"),
    columnOf(contents, "invoices", "date"),
    columnOf(contents, "payments", "paidOn"),
    columnOf(contents, "lots", "received"),
    columnOf(contents, "lotUse", "date"),
  ];
  return `IF(MAX(${dates.join(",")})>0,MAX(${dates.join(",")}),TODAY())`;
}

/** Rows for what there is and for what will be entered before the sheets are built anew. */
const withSpare = (rows: number, least = 12): number =>
  rows + Math.max(least, Math.ceil(rows / 10));

/** Contracts are few, and two tables of them stand one under the other. */
const FEW = 5;

function columnOf(
  contents: readonly Contents[],
  key: TableKey,
  name: string,
): string {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  const declared = (
    table.columns as Readonly<Record<string, { readonly heading: string }>>
  )[name];
  const at = given && declared ? columnAt(given.headings, declared) : -1;
  if (!given || at < 0)
    throw unusable(
      `The table ${table.name} has no column ${declared?.heading ?? name}, and the tote register needs it`,
    );
  return `${given.name}[${given.headings[at] ?? ""}]`;
}
