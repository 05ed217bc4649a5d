import { isBlank } from "../../functions/read-cell";
import { serialOf } from "../../measures/read-date";
import type { CellContent } from "../contents";
import type { LedgerRole } from "./roles";
import { datesWritten } from "./written-date";
import { readWrittenNumber } from "./written-number";
import { basisIn, plainText, weightUnitIn } from "./written-units";

/** What the values of a column are like; shares are of its cells that are not blank. */
export interface ColumnValues {
  readonly filled: number;
  readonly numbers: readonly number[];
  readonly days: number;
  readonly texts: number;
  readonly distinct: number;
  readonly currencies: number;
  readonly units: number;
  readonly bases: number;
  readonly lots: number;
  readonly many: boolean;
}

const FIRST_DAY = serialOf(2000, 1, 1);
const LAST_DAY = serialOf(2100, 1, 1);
const LOOKED_AT = 400;

export function columnValues(cells: readonly CellContent[]): ColumnValues {
  const filled = cells.filter((cell) => !isBlank(cell)).slice(0, LOOKED_AT);
  const count = (holds: (cell: CellContent) => boolean): number =>
    filled.length === 0 ? 0 : filled.filter(holds).length / filled.length;
  const numbers = filled.flatMap((cell) => {
    const value = figureOf(cell);
    return value === undefined ? [] : [value];
  });
  return {
    filled:
      cells.length === 0
        ? 0
        : filled.length / Math.min(cells.length, LOOKED_AT),
    numbers,
    days: count(isDayCell),
    texts: count(
      (cell) => typeof cell === "string" && figureOf(cell) === undefined,
    ),
    distinct: new Set(filled.map(String)).size / Math.max(1, filled.length),
    currencies: count((cell) =>
      /^(us|usd|ca|cad|cdn|us\$|c\$|\$ us|\$ ca|\$us|\$ca)$/.test(
        plainText(String(cell)),
      ),
    ),
    units: count(
      (cell) =>
        weightUnitIn(String(cell)) !== undefined &&
        figureOf(cell) === undefined &&
        String(cell).length < 12,
    ),
    bases: count(
      (cell) =>
        typeof cell === "string" &&
        figureOf(cell) === undefined &&
        basisIn(cell) !== undefined,
    ),
    lots: count(
      (cell) =>
        typeof cell === "string" && /\d{2}-\d{2}|\blot\b|:\d+/i.test(cell),
    ),
    many: filled.length > 3,
  };
}

/** The number in a cell, whatever is written beside it. */
export function figureOf(cell: CellContent | undefined): number | undefined {
  if (typeof cell === "number") return cell;
  if (typeof cell !== "string" || datesWritten(cell).length > 0)
    return undefined;
  const written = readWrittenNumber(cell);
  // "T-014" and "26-11" are names, not numbers.
  if (!written || /^[a-z]+-|\d-\d|[a-z]\d/i.test(cell.trim())) return undefined;
  const beside = plainText(written.beside)
    .replace(/[$#°/]/g, " ")
    .trim();
  return beside === "" || UNIT_WORDS.test(beside) ? written.value : undefined;
}

const UNIT_WORDS =
  /^((usd?|cad?|cdn|lbs?|pounds?|livres?|kgs?|kilos?|gal|gallons?|bx|brix|per|le|la|par|a|at|net|66|%|\.)\s*)+$/;

const isDayCell = (cell: CellContent): boolean =>
  typeof cell === "number"
    ? cell >= FIRST_DAY && cell < LAST_DAY && Number.isInteger(cell)
    : typeof cell === "string" && datesWritten(cell).length > 0;

/** How well values suit a role, 0 to 1; 0 means they cannot be it. */
export function suits(role: LedgerRole, of: ColumnValues): number {
  const figures = of.numbers.length > 0 && of.texts < 0.4 ? 1 - of.texts : 0;
  const within = (low: number, high: number): number =>
    figures * share(of.numbers, (value) => value >= low && value <= high);
  switch (role) {
    case "date":
      return of.days > 0.5 ? of.days : 0;
    case "gross":
    case "net":
      return within(300, 6000) * (of.days > 0.8 ? 0.2 : 1);
    case "tare":
      return within(20, 400);
    case "brix":
      return within(55, 80);
    case "price":
      return within(0.5, 80) * (of.distinct < 0.6 ? 1 : 0.7);
    case "amount":
      return within(500, 60_000);
    case "currency":
      return of.currencies;
    case "unit":
      return of.units;
    case "basis":
      return of.bases;
    case "ticket":
      return of.days > 0.5 ? 0 : of.distinct * of.filled;
    case "buyer":
      // A remark is different every time, a buyer comes back.
      return of.days > 0.5 || (of.many && of.distinct > 0.7)
        ? 0
        : of.texts * (1 - of.lots);
    case "lot":
      return of.days > 0.5 ? 0.2 : Math.max(of.lots, 0.4);
    case "invoice":
    case "contract":
    case "paid":
      return 0.5;
  }
}

const share = (
  values: readonly number[],
  holds: (value: number) => boolean,
): number =>
  values.length === 0 ? 0 : values.filter(holds).length / values.length;
