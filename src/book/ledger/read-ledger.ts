import { isBlank } from "../../functions/read-cell";
import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
} from "../../measures/quantity";
import { type Gallon, usGallonsEach } from "../../measures/gallon";
import { isDay } from "../../measures/read-date";
import { KG_PER_LB } from "../../measures/units";
import type { SaleBasis } from "../../trade/totes/sale-amount";
import type { CellContent } from "../contents";
import { shown } from "../wording";
import { figureOf } from "./column-values";
import type { Cells } from "./headings";
import { gallonSaid, ledgerGallonUnsaid } from "./ledger-gallon";
import type { LedgerColumns } from "./propose";
import type { LedgerRole } from "./roles";
import { datesWritten, type DateOrder } from "./written-date";
import { readWrittenNumber } from "./written-number";
import {
  basisIn,
  currencyIn,
  weightUnitIn,
  type Currency,
  type WeightUnit,
} from "./written-units";

/** How a ledger is to be read: which column is what, and what its figures are in where no cell says so itself. */
export interface LedgerReading {
  readonly columns: LedgerColumns;
  readonly weight: WeightUnit;
  readonly basis: SaleBasis | undefined;
  readonly currency: Currency | undefined;
  readonly dates: DateOrder | undefined;
  /** Which gallon a price for a gallon is for, where the row does not name it; without it, the US one. */
  readonly gallon?: Gallon;
}

/** One row of a ledger in house units; what could not be read is undefined and named in `unread`. */
export interface LedgerTicket {
  /** Counted from 0 in the cells given. */
  readonly row: number;
  readonly ticket: string | undefined;
  readonly date: DaySerial | undefined;
  readonly buyer: string | undefined;
  readonly contract: string | undefined;
  readonly gross: Kilograms | undefined;
  readonly tare: Kilograms | undefined;
  readonly net: Kilograms | undefined;
  readonly brix: Brix | undefined;
  readonly price: number | undefined;
  /** Undefined too for a gallon that nobody has named. */
  readonly basis: SaleBasis | undefined;
  /** US gallons in one of the gallons the price is for, where that is not one. */
  readonly gallonsEach?: number;
  readonly currency: Currency | undefined;
  readonly amount: number | undefined;
  readonly lot: string | undefined;
  readonly invoice: string | undefined;
  readonly paid: string | undefined;
  readonly unread: readonly {
    readonly role: LedgerRole;
    readonly says: string;
  }[];
}

/** Reads the ticket rows of a ledger. A cell that cannot be read leaves its figure out; a blank is never zero. */
export const readLedger = (
  cells: Cells,
  rows: readonly number[],
  how: LedgerReading,
): readonly LedgerTicket[] => {
  let isAsked = false;
  return rows.map((row) => {
    const ticket = readRow(cells[row] ?? [], row, how);
    const unread = ticket.unread.filter(({ says }) => {
      const repeats = isAsked && says === ledgerGallonUnsaid;
      isAsked ||= says === ledgerGallonUnsaid;
      return !repeats;
    });
    return { ...ticket, unread };
  });
};

function readRow(
  cells: readonly CellContent[],
  row: number,
  how: LedgerReading,
): LedgerTicket {
  const unread: { role: LedgerRole; says: string }[] = [];
  const cell = (role: LedgerRole): CellContent =>
    cells[how.columns[role] ?? -1] ?? null;
  const text = (role: LedgerRole): string | undefined =>
    isBlank(cell(role))
      ? undefined
      : shown(cell(role)).replace(/^"|"$/g, "").trim();
  const read = <T>(
    role: LedgerRole,
    of: (content: CellContent) => T | undefined,
  ): T | undefined => {
    const content = cell(role);
    if (isBlank(content)) return undefined;
    const value = of(content);
    if (value === undefined)
      unread.push({ role, says: `${shown(content)} cannot be read` });
    return value;
  };
  const ownUnit = weightUnitIn(text("unit") ?? "");
  const weight = (role: "gross" | "tare" | "net"): Kilograms | undefined =>
    read(role, (content) => weightOf(content, ownUnit ?? how.weight));
  const priceText = `${text("price") ?? ""} ${text("basis") ?? ""}`;
  const said = basisIn(priceText) ?? how.basis;
  const gallon =
    said === "per gal"
      ? gallonSaid(priceText, how.gallon ?? "US", how.gallon ?? "US")
      : "US";
  const each = usGallonsEach(gallon);
  if (each === undefined && !isBlank(cell("price")))
    unread.push({ role: "price", says: ledgerGallonUnsaid });
  return {
    row,
    ticket: text("ticket"),
    date: read("date", (content) => dayOf(content, how.dates)),
    buyer: text("buyer"),
    contract: text("contract"),
    gross: weight("gross"),
    tare: weight("tare"),
    net: weight("net"),
    brix: read("brix", (content) => {
      const value = figureOf(content);
      return value === undefined ? undefined : as<Brix>(value);
    }),
    price: read("price", figureOf),
    basis: each === undefined ? undefined : said,
    ...(each === undefined || each === 1 ? {} : { gallonsEach: each }),
    currency:
      currencyIn(text("currency") ?? "") ??
      currencyIn(priceText) ??
      how.currency,
    amount: read("amount", figureOf),
    lot: text("lot"),
    invoice: text("invoice"),
    paid: text("paid"),
    unread,
  };
}

function weightOf(
  content: CellContent,
  unit: WeightUnit,
): Kilograms | undefined {
  const value = figureOf(content);
  if (value === undefined) return undefined;
  const own =
    typeof content === "string"
      ? weightUnitIn(readWrittenNumber(content)?.beside ?? "")
      : undefined;
  return as<Kilograms>(value * ((own ?? unit) === "kg" ? 1 : KG_PER_LB));
}

/** A day that can be two days is not read; the order of the other days decides. */
function dayOf(
  content: CellContent,
  order: DateOrder | undefined,
): DaySerial | undefined {
  if (typeof content === "number")
    return isDay(content) ? as<DaySerial>(Math.floor(content)) : undefined;
  const days = typeof content === "string" ? datesWritten(content, order) : [];
  return days.length === 1 ? days[0] : undefined;
}
