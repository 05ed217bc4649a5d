import { unanswerable, unusable } from "../measures/cannot-answer";
import {
  as,
  type DaySerial,
  type Kilograms,
  type Money,
  type MoneyPerHour,
  type MoneyPerKg,
  type Share,
} from "../measures/quantity";
import { calendarOf } from "../measures/read-date";
import { KG_PER_LB } from "../measures/units";
import {
  changeOverCost,
  type ChangeOverCost,
} from "../trade/costing/change-over";
import { hourRate } from "../trade/costing/machine-hour";
import {
  type BillCarried,
  billCarried,
  type BillShared,
  comparedDrivers,
  hoursOn,
  type Season,
  sharedEachWay,
} from "../trade/costing/overheads-by-driver";
import type { Book, BookRow } from "./book";
import { overheadsOf } from "./book-days";
import { bulkPrice } from "./bulk-price";
import { lineOf } from "./costing-lines";
import { isSameName as same } from "./keys";
import { newestDay } from "./newest-day";
import { seasonOf, valuingChannel } from "./overheads-season";

export interface OverheadsQuestion {
  readonly asOf?: DaySerial;
  /** A run of the season by name; by default its newest. */
  readonly run?: string;
  /** Bills by their item, or by what they are shared by; by default those by lots and runs. */
  readonly bills?: string;
  readonly channel?: string;
}

export interface OverheadsAnswer {
  readonly season: number;
  readonly channel: string;
  readonly bills: readonly (BillCarried & {
    readonly row: BookRow<"overheads">;
  })[];
  readonly compared: {
    readonly bills: string;
    readonly amount: Money;
    readonly run: string;
    readonly bottles: number;
    readonly ways: readonly {
      readonly driver: string;
      readonly shared: BillShared | undefined;
      readonly ofRun: Money | undefined;
    }[];
  };
  readonly lines: readonly {
    readonly line: string;
    readonly hours: number;
    readonly bills: Money;
    readonly rate: MoneyPerHour | undefined;
    readonly crew: MoneyPerHour;
    readonly change: ChangeOverCost | undefined;
  }[];
  readonly whole: Season;
}

/** Refuses (#VALUE!) a run or a bill the season does not have; a season without runs has no answer (#N/A). */
export function overheadsAnswer(
  book: Book,
  question: OverheadsQuestion = {},
): OverheadsAnswer {
  const asOf = question.asOf ?? newestDay(book) ?? as<DaySerial>(0);
  const season = calendarOf(asOf).year;
  const channel = channelAsked(book, question.channel);
  const whole = seasonOf(book, season, { channel, asOf });
  const bills = overheadsOf(book, season);
  return {
    season,
    channel,
    whole,
    bills: bills.map((row) => ({ row, ...billCarried(billOf(row), whole) })),
    compared: compared(bills, whole, question, season),
    lines: linesOf(book, bills, whole, asOf),
  };
}

const billOf = (row: BookRow<"overheads">) => ({
  item: row.item,
  perYear: row.perYear,
  toBulk: row.shareToBulk ?? as<Share>(0),
  driver: row.sharedBy,
});

function channelAsked(book: Book, asked: string | undefined): string {
  if (asked === undefined) return valuingChannel(book);
  const found = book.channels.find(({ channel }) => same(channel, asked));
  if (!found)
    throw unusable(
      `There is no channel "${asked}"; the book has ${book.channels.map((c) => c.channel).join(", ")}`,
    );
  return found.channel;
}

export const USUAL_BILLS = "lots and runs";

function compared(
  rows: Book["overheads"],
  whole: Season,
  { run: asked, bills: wanted = USUAL_BILLS }: OverheadsQuestion,
  season: number,
): OverheadsAnswer["compared"] {
  const newest = whole.runs.at(-1);
  const run =
    asked === undefined
      ? newest
      : whole.runs.find((one) => same(one.run, asked));
  if (!newest) throw unanswerable(`no run in ${season} to share bills between`);
  if (!run)
    throw unusable(
      `There is no run "${asked}" in ${season}; it has ${newest.run} and ${whole.runs.length - 1} more`,
    );
  const meant = rows.filter(
    (row) => same(row.item, wanted) || same(row.sharedBy, wanted),
  );
  if (meant.length === 0)
    throw unusable(
      `No bill of ${season} is called or shared by "${wanted}"; Overheads has ${rows.map((row) => row.item).join(", ")}`,
    );
  const amount = as<Money>(
    meant.reduce(
      (sum, row) => sum + row.perYear * (1 - (row.shareToBulk ?? 0)),
      0,
    ),
  );
  const at = whole.runs.indexOf(run);
  const shared = sharedEachWay(amount, whole);
  return {
    bills: meant.map(({ item }) => item).join(" and "),
    amount,
    run: run.run,
    bottles: run.bottles,
    ways: comparedDrivers.map((driver, i) => ({
      driver,
      shared: shared[i],
      ofRun: shared[i]?.byRun[at],
    })),
  };
}

const CLEANING = /\bclean/i;

function linesOf(
  book: Book,
  bills: Book["overheads"],
  whole: Season,
  asOf: DaySerial,
): OverheadsAnswer["lines"] {
  const cleaning = bills
    .filter(({ item }) => CLEANING.test(item))
    .reduce((sum, { perYear }) => sum + perYear, 0);
  const kinds = book.bulkPrices.map(({ syrupKind }) => syrupKind);
  const bulk =
    kinds[0] === undefined ? undefined : bulkPrice(book, kinds[0], asOf);
  return book.lines.map((row) => {
    const hours = whole.runs
      .filter((run) => same(run.line, row.line))
      .reduce((sum, run) => sum + run.hours, 0);
    // A bill by "small-line hours" is carried by every line whose name starts so, by its hours.
    const carried = bills.reduce((sum, bill) => {
      const all = hoursOn(bill.sharedBy.trim().toLowerCase(), whole.runs);
      const own = hoursOn(
        bill.sharedBy.trim().toLowerCase(),
        whole.runs.filter((run) => same(run.line, row.line)),
      );
      return (
        sum +
        (all > 0
          ? (bill.perYear * (1 - (bill.shareToBulk ?? 0)) * own) / all
          : 0)
      );
    }, 0);
    const product = book.products[0];
    const crew = product
      ? lineOf(book, product, row).crew
      : as<MoneyPerHour>(0);
    return {
      line: row.line,
      hours,
      bills: as<Money>(carried),
      rate: hours > 0 ? hourRate(as<Money>(carried), as(hours)) : undefined,
      crew,
      change:
        bulk && crew > 0
          ? changeOverCost({
              crew,
              setup: row.setup,
              clean: row.cleanDown,
              purge: as<Kilograms>(row.purge),
              syrup: as<MoneyPerKg>(bulk.pricePerPound / KG_PER_LB),
              cleaning: as<Money>(
                whole.runs.length > 0 ? cleaning / whole.runs.length : 0,
              ),
            })
          : undefined,
    };
  });
}
