import type { DaySerial } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import type { Book } from "../book";
import { gathered, pounds } from "../checks/gathered";
import type { Contents } from "../contents";
import { type Finding, listed } from "../finding";
import { newestDay } from "../newest-day";
import { setting } from "../setting";
import { toteContracts } from "../tote-contracts";
import { toteTickets } from "../tote-tickets";
import { balancePounds, lotBalances } from "../totes-lots";
import type { TotesKept } from "./totes-kept";

interface Rolled {
  readonly season: number;
  readonly day: DaySerial;
  readonly totes: TotesKept;
  /** How many overheads stand for the new season as an estimate. */
  readonly estimated: number;
  /** Whether the closed season's totals go along, over which they are shared. */
  readonly hasTotals: boolean;
  /** Rows that could not be read and are carried as they stand. */
  readonly unread: readonly string[];
  /** Tables that are no part of a farm book. */
  readonly strangers: readonly Contents[];
}

/** What a person should know before the old season's book is put away. */
export function rollFindings(book: Book, rolled: Rolled): readonly Finding[] {
  return [
    ...notOver(book, rolled),
    ...overheads(rolled),
    ...uncounted(book, rolled),
    ...overdrawn(book, rolled),
    ...unsent(book, rolled),
    ...asTheyStand(rolled),
  ];
}

/** Closing figures hold only for what has been entered. */
function notOver(book: Book, { season, day }: Rolled): readonly Finding[] {
  const newest = newestDay(book);
  if (newest === undefined || newest >= day) return [];
  return [
    {
      where: `season ${season - 1}`,
      found: `the newest entry is of ${isoDate(newest)}, the season ends on ${isoDate(day)}`,
      meaning:
        "what is entered in the old book after this is not in the new one",
      todo: "roll again, into a fresh file, if something of the old season is still to come",
    },
  ];
}

const overheads = ({
  season,
  estimated,
  hasTotals,
}: Rolled): readonly Finding[] =>
  estimated === 0
    ? []
    : [
        {
          where: `Overheads, season ${season}`,
          found: `${estimated} ${estimated === 1 ? "item" : "items"} as in ${season - 1}`,
          meaning: `the bills of ${season} are not known yet, so last season's stand as the estimate; ${hasTotals ? `they are shared over what ${season - 1} ran, packed and bought until ${season} has done as much, and every full cost says so` : "until the first runs are entered nothing shares them out, and full costs are withheld"}`,
          todo: "put in this season's own figures as they come",
        },
      ];

function uncounted(book: Book, { day }: Rolled): readonly Finding[] {
  const countDay = setting(book, "Count date") ?? newestDay(book) ?? day;
  const off =
    countDay > day
      ? []
      : lotBalances(book, day).filter(
          ({ unexplained }) => Math.abs(balancePounds(unexplained)) > 0.5,
        );
  return gathered(off, {
    column: "Left lb",
    found: (rows) =>
      `the count and the book differ: ${listed(rows.map(({ name, unexplained }) => `${name} by ${pounds(-unexplained)}`))}`,
    meaning:
      "the new book opens with what the old one says, not with the count",
    todo: "if the count is right, write the difference into Lot use of the old book as lost or adjusted, and roll again",
  });
}

const overdrawn = (book: Book, { day }: Rolled): readonly Finding[] =>
  gathered(
    lotBalances(book, day).filter(({ left }) => balancePounds(left) < 0),
    {
      column: "Left lb",
      found: (rows) =>
        `more was drawn than came in: ${listed(rows.map(({ name, left }) => `${name} by ${pounds(-left)}`))}`,
      meaning: "the new book opens with less than nothing of it",
      todo: "correct the draws or the net weight in the old book, and roll again",
    },
  );

/** A contract past its last day hands nothing on; somebody should have seen that it was not filled. */
function unsent(book: Book, { day, season }: Rolled): readonly Finding[] {
  const ended = toteContracts(book, toteTickets(book, day), day).filter(
    ({ row, progress }) => row.end < day && balancePounds(progress.left) > 0,
  );
  return gathered(
    ended.map((contract) => ({ ...contract, place: contract.row.place })),
    {
      column: "Contract lb",
      found: (rows) =>
        `ended with pounds not sent: ${listed(rows.map(({ row, progress }) => `${row.contract} (${pounds(progress.left)})`))}`,
      meaning: `a contract that is over promises nothing in ${season}`,
      todo: "if the buyer still takes it, move its last day in the old book and roll again",
    },
  );
}

const asTheyStand = ({ unread, strangers }: Rolled): readonly Finding[] => [
  ...(unread.length === 0
    ? []
    : [
        {
          where: unread[0] ?? "",
          found: `${unread.length === 1 ? "a row that cannot be used" : "rows that cannot be used"}: ${listed(unread)}`,
          meaning:
            "carried as it stands, for no balance can be said of it; it counts in neither book",
          todo: "put it right in the old book, and roll again",
        },
      ]),
  ...(strangers.length === 0
    ? []
    : [
        {
          where: strangers[0]?.sheet ?? "",
          found: `tables of your own: ${listed(strangers.map(({ name }) => name))}`,
          meaning: "they are no part of a farm book and stay in the old one",
          todo: "copy their sheets over by hand if the new season needs them",
        },
      ]),
];
