import { isBlank } from "../functions/read-cell";
import { answerOrNone } from "../measures/cannot-answer";
import { as, type DaySerial } from "../measures/quantity";
import { readDate } from "../measures/read-date";
import { type Book, bookTables, type TableKey } from "./book";
import {
  type CellContent,
  columnAt,
  type Contents,
  contentsOf,
} from "./contents";
import { setting } from "./setting";

/**
 * The dates of what has happened: syrup came in, was drawn, run, put in oak, shipped, billed or paid for, or somebody
 * noted what bulk syrup costs. Due dates, contracts and price lists reach ahead and do not count.
 */
const happenings = {
  lots: ["received"],
  lotUse: ["date"],
  bulkPrices: ["validFrom"],
  runs: ["date"],
  oakBarrels: ["filledOn", "emptiedOn"],
  toteShipments: ["shipped"],
  invoices: ["date"],
  payments: ["paidOn"],
} as const satisfies Partial<Record<TableKey, readonly string[]>>;

const COUNT_DATE = "Count date";

/**
 * The newest day of the book, which every answer speaks of unless it is asked for another day: the newest date of what
 * has happened (see `happenings`), and of the setting "Count date". Undefined in a book without any.
 */
export function newestDay(book: Book): DaySerial | undefined {
  const days = Object.entries(happenings).flatMap(([table, columns]) =>
    book[table as keyof typeof happenings].flatMap((row) =>
      columns.map(
        (column) => (row as Readonly<Record<string, unknown>>)[column],
      ),
    ),
  );
  return newest([...days, setting(book, COUNT_DATE)]);
}

/** The same of tables as they stand in a workbook or a folder; what is no date counts for nothing. */
export function newestDayIn(all: readonly Contents[]): DaySerial | undefined {
  const days = datedColumns(all).flatMap(({ given, at }) =>
    given.rows.map((row) => dayIn(row[at])),
  );
  return newest([...days, countDay(all)]);
}

/** The setting "Count date" as it stands. */
export function countDay(all: readonly Contents[]): DaySerial | undefined {
  const { settings } = bookTables;
  const given = contentsOf(all, settings);
  if (!given) return undefined;
  const nameAt = columnAt(given.headings, settings.columns.setting);
  const row = given.rows.find(
    (cells) =>
      String(cells[nameAt]).trim().toLowerCase() === COUNT_DATE.toLowerCase(),
  );
  return dayIn(row?.[columnAt(given.headings, settings.columns.value)]);
}

/** The newest day as a worksheet formula without "=", over those of the tables that are there. */
export const newestDayFormula = (all: readonly Contents[]): string =>
  `MAX(${[
    ...datedColumns(all).map(
      ({ given, at }) => `MAX(${given.name}[${given.headings[at]}])`,
    ),
    `SUMIFS(Settings[Value],Settings[Setting],"${COUNT_DATE}")`,
  ].join(",")})`;

function datedColumns(
  all: readonly Contents[],
): readonly { readonly given: Contents; readonly at: number }[] {
  return Object.entries(happenings).flatMap(([key, columns]) => {
    const table = bookTables[key as keyof typeof happenings];
    const given = contentsOf(all, table);
    if (!given) return [];
    return columns.flatMap((name) => {
      const column = (
        table.columns as Readonly<
          Record<string, { readonly heading: string; readonly csv?: string }>
        >
      )[name];
      const at = column ? columnAt(given.headings, column) : -1;
      return at < 0 ? [] : [{ given, at }];
    });
  });
}

function dayIn(content: CellContent | undefined): DaySerial | undefined {
  if (isBlank(content)) return undefined;
  if (typeof content !== "number" && typeof content !== "string")
    return undefined;
  return answerOrNone(() => readDate(content, "date"));
}

const newest = (days: readonly unknown[]): DaySerial | undefined => {
  const known = days.filter((day): day is number => typeof day === "number");
  return known.length === 0
    ? undefined
    : as<DaySerial>(known.reduce((a, b) => Math.max(a, b)));
};
