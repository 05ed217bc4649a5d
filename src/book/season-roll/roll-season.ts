import { unusable } from "../../measures/cannot-answer";
import type { DaySerial } from "../../measures/quantity";
import { calendarOf } from "../../measures/read-date";
import { type Book, bookTables, type TableKey } from "../book";
import { bulkPricesFromSettings } from "../bulk-prices-from-settings";
import { type Contents, contentsOf } from "../contents";
import type { Finding } from "../finding";
import { newestDay } from "../newest-day";
import { readBook } from "../read";
import { setting } from "../setting";
import { type Balance, balancesOf, closingDay } from "./balances";
import { onlyRows, ownPlace, withCarriedDraws } from "./carried-rows";
import { type CarriedBalance, carriedBalances, requireSame } from "./opening";
import { estimatesFor } from "./overheads-carried";
import { rollFindings } from "./roll-findings";
import { syrupKept } from "./syrup-kept";
import { totalsCarried } from "./totals-carried";
import { totesKept } from "./totes-kept";

/** The next season's book, not yet written. */
export interface SeasonRoll {
  readonly season: number;
  readonly closingDay: DaySerial;
  readonly contents: readonly Contents[];
  readonly closing: readonly Balance[];
  readonly findings: readonly Finding[];
}

/**
 * Makes the book of a season from the one before. What is left, owed or promised is carried, prices and all else that is
 * no happening with their dates; the old book stays as it is. The same season again gives the same book.
 * Refuses (#VALUE!) a season that does not follow on the book's newest day.
 */
export function rollSeason(
  given: readonly Contents[],
  season: number,
): SeasonRoll {
  const { book } = readBook(given);
  requireNext(book, season);
  const day = closingDay(season);
  const totes = totesKept(book, day);
  const syrup = syrupKept(book, day, totes);
  const countDay = setting(book, "Count date") ?? newestDay(book) ?? day;
  const kept: Partial<{ readonly [K in TableKey]: Book[K] }> = {
    lots: syrup.lots,
    lotUse: syrup.draws,
    oakBarrels: syrup.barrels,
    runs: syrup.runs,
    fillChecks: syrup.fillChecks,
    toteContracts: totes.contracts,
    toteShipments: totes.shipments,
    invoices: totes.invoices,
    payments: totes.payments,
    stockCount: countDay > day ? book.stockCount : [],
    overheads: book.overheads.filter((row) => row.season >= season - 1),
  };
  const unread: string[] = [];
  let estimated = 0;
  const carried = withBulkPrices(given).flatMap(
    (contents): readonly Contents[] => {
      const key = tableKeyOf(contents);
      if (key === undefined || key === "seasonTotals") return [];
      const rows = kept[key];
      if (rows === undefined) return [ownPlace(contents)];
      const only = onlyRows(contents, key, book[key], rows);
      unread.push(...only.unread);
      if (key === "lotUse")
        return [withCarriedDraws(only.contents, syrup.carried, day, season)];
      if (key !== "overheads") return [only.contents];
      const copies = estimatesFor(contents, book.overheads, season);
      estimated = copies.length;
      return [{ ...only.contents, rows: [...copies, ...only.contents.rows] }];
    },
  );
  const totals = totalsCarried(
    contentsOf(given, bookTables.seasonTotals),
    book,
    season - 1,
  );
  const made = [...carried, ...totals];
  const roll: SeasonRoll = {
    season,
    closingDay: day,
    contents: made,
    closing: balancesOf(book, day),
    findings: rollFindings(book, {
      season,
      day,
      totes,
      estimated,
      hasTotals: totals.some(({ rows }) =>
        rows.some((row) => row.includes("runs")),
      ),
      unread,
      strangers: given.filter((one) => tableKeyOf(one) === undefined),
    }),
  };
  openingOf(roll, made);
  return roll;
}

/** Closing and opening figures, these read from the new book's own tables; refuses (#VALUE!) a book in which they differ. */
export function openingOf(
  roll: SeasonRoll,
  contents: readonly Contents[],
): readonly CarriedBalance[] {
  const balances = carriedBalances(
    roll.closing,
    balancesOf(readBook(contents).book, roll.closingDay),
  );
  requireSame(balances);
  return balances;
}

function requireNext(book: Book, season: number): void {
  const newest = newestDay(book);
  if (newest === undefined)
    throw unusable(
      "The book holds no date of anything that happened, so it has no season to close.",
    );
  const { year } = calendarOf(newest);
  if (season === year || season === year + 1) return;
  throw unusable(
    season > year
      ? `--season ${season}: the book's newest entry is of ${year}, so the next season is ${year + 1}; roll to that one first.`
      : `--season ${season}: the book has entries of ${year} already; the season to open is ${year + 1}.`,
  );
}

const tableKeyOf = ({ name }: Contents): TableKey | undefined =>
  (Object.keys(bookTables) as TableKey[]).find(
    (key) => contentsOf([{ name } as Contents], bookTables[key]) !== undefined,
  );

/** Prices kept among the settings would be hidden by the new book's own, empty table. */
function withBulkPrices(given: readonly Contents[]): readonly Contents[] {
  if (contentsOf(given, bookTables.bulkPrices)) return given;
  const made = bulkPricesFromSettings(given);
  return made === undefined ? given : [...given, made];
}
