import { unusable } from "../measures/cannot-answer";
import type { Gallon } from "../measures/gallon";
import { isDay, readDate } from "../measures/read-date";
import { isOrdinary, readNumber } from "../measures/read-number";
import { readQuantity } from "../measures/read-quantity";
import { readPercent, readShare } from "../measures/read-share";
import { fromHouse, toHouse, unitNamed } from "../measures/units";
import type { CellTerm, NumberTerm } from "../terms/term";
import { limitsCheck, tidyLimitsCheck, wellInside } from "./limits";
import type { Words } from "./words";

/** `gallon` says what a bare "gal" in text is; without it that is the US one. */
export type CellReader = (
  raw: unknown,
  words: Words,
  gallon?: Gallon,
) => unknown;

/** Reads one cell that is not blank. */
export const readCell = (
  term: CellTerm,
  raw: unknown,
  words: string,
  gallon?: Gallon,
): unknown => cellReader(term)(raw, () => words, gallon);

const prepared = new WeakMap<CellTerm, CellReader>();

/** The same for many cells: what a term says of units and limits is looked up once. */
export function cellReader(term: CellTerm): CellReader {
  const known = prepared.get(term);
  if (known) return known;
  const read = readerOf(term);
  const { low, high, scale, offset } = atOnce(term);
  const reader: CellReader = (raw, words, gallon) => {
    if (typeof raw === "number" && raw > low && raw < high)
      return raw * scale + offset;
    if (typeof raw === "object" && raw !== null && "error" in raw)
      throw unusable(
        `${words()}: the cell holds the error ${String(raw.error)}`,
      );
    return read(raw, words, gallon);
  };
  prepared.set(term, reader);
  return reader;
}

interface AtOnce {
  readonly low: number;
  readonly high: number;
  readonly scale: number;
  readonly offset: number;
}

const NEVER: AtOnce = { low: Infinity, high: -Infinity, scale: 1, offset: 0 };

/** The numbers that no rule of a term can touch, well inside its limits: most cells hold one, and reading it must cost nothing. */
function atOnce(term: CellTerm): AtOnce {
  switch (term.kind) {
    case "quantity": {
      const { scale, offset } = unitNamed(term.unit);
      return { ...wellInside(term), scale, offset };
    }
    case "share": {
      const { low, high } = wellInside(term);
      return { low, high: Math.min(high, 1), scale: 1, offset: 0 };
    }
    case "money":
      return { ...wellInside(term), scale: 1, offset: 0 };
    case "number":
      return term.whole || term.unit === "%"
        ? NEVER
        : { ...wellInside(term), scale: 1, offset: 0 };
    default:
      return NEVER;
  }
}

function readerOf(term: CellTerm): CellReader {
  switch (term.kind) {
    case "text":
      return term.keepsZeros ? readCode : readText;
    case "choice":
      return choiceReader(term.choices);
    case "yes or no":
      return readYesNo;
    case "date":
      return readDay;
    case "quantity":
      return quantityReader(term);
    case "share":
      return figureReader(term, readShare, (n) => n <= 1);
    case "money":
      return figureReader(term, readMoney, () => true);
    case "number":
      return numberReader(term);
  }
}

function quantityReader(
  term: CellTerm & { readonly unit: string },
): CellReader {
  const unit = unitNamed(term.unit);
  const check = tidyLimitsCheck(term);
  return (raw, words, gallon) => {
    const given = numberOrText(raw, words);
    // A number is already in the stated unit; converting it back would add binary noise at a limit.
    if (typeof given === "number") {
      check(given, words, raw);
      return toHouse(given, unit);
    }
    const house = readQuantity(given, unit, words(), gallon);
    check(fromHouse(house, unit), words, raw);
    return house;
  };
}

type ReadFigure = (given: number | string, words: string) => number;

/** `asItIs` tells the numbers that reading leaves alone, which need no words for a complaint. */
function figureReader(
  term: CellTerm,
  read: ReadFigure,
  asItIs: (given: number) => boolean,
): CellReader {
  const check = limitsCheck(term);
  return (raw, words) => {
    const given = numberOrText(raw, words);
    const value =
      typeof given === "number" && asItIs(given) ? given : read(given, words());
    check(value, words, raw);
    return value;
  };
}

const readMoney: ReadFigure = (given, words) =>
  typeof given === "number"
    ? given
    : readNumber(given.replace(/^(-?)\$\s*/, "$1"), words);

function numberReader(term: NumberTerm): CellReader {
  const isPercent = term.unit === "%";
  const read = isPercent ? readPercent : readPlainNumber;
  const asItIs = (n: number): boolean => !isPercent || n <= 0 || n > 1;
  if (!term.whole) return figureReader(term, read, asItIs);
  return figureReader(
    term,
    (given, words) => {
      const value = read(given, words);
      if (!Number.isInteger(value))
        throw unusable(`${words}: ${given} is not a whole number`);
      return value;
    },
    (n) => Number.isInteger(n) && asItIs(n),
  );
}

const readPlainNumber: ReadFigure = (given, words) =>
  typeof given === "number" ? given : readNumber(given, words);

function numberOrText(raw: unknown, words: Words): number | string {
  if (typeof raw === "number") {
    if (!isOrdinary(raw)) throw unusable(`${words()}: not an ordinary number`);
    return raw;
  }
  if (typeof raw === "string") return raw;
  throw unusable(`${words()}: ${String(raw).toUpperCase()} is not a number`);
}

const readText: CellReader = (raw, words) =>
  typeof raw === "boolean"
    ? String(raw).toUpperCase()
    : String(numberOrText(raw, words)).trim();

const readCode: CellReader = (raw, words) => {
  if (typeof raw === "number" && isOrdinary(raw))
    throw unusable(
      `${words()}: ${raw} is a number, and a number loses leading zeros and long digits; type it as text, with an apostrophe before the first digit`,
    );
  return readText(raw, words);
};

function readDay(raw: unknown, words: Words): number {
  const given = numberOrText(raw, words);
  return typeof given === "number" && isDay(given)
    ? Math.floor(given)
    : readDate(given, words());
}

function choiceReader(choices: readonly string[]): CellReader {
  const named = new Map([
    ...choices.map((c) => [c.toLowerCase(), c] as const),
    ...choices.map((c) => [c, c] as const),
  ]);
  return (raw, words) => {
    const typed = String(raw).trim();
    const found = named.get(typed) ?? named.get(typed.toLowerCase());
    if (found === undefined)
      throw unusable(
        `${words()}: "${String(raw)}" is not one of ${choices.map((c) => `"${c}"`).join(", ")}`,
      );
    return found;
  };
}

function readYesNo(raw: unknown, words: Words): boolean {
  if (typeof raw === "boolean") return raw;
  const typed = String(raw).trim().toLowerCase();
  if (["yes", "true", "1", "y"].includes(typed)) return true;
  if (["no", "false", "0", "n"].includes(typed)) return false;
  throw unusable(`${words()}: "${String(raw)}" is neither yes nor no`);
}

export const isBlank = (raw: unknown): boolean =>
  raw === null ||
  raw === undefined ||
  (typeof raw === "string" && raw.trim() === "") ||
  (Array.isArray(raw) && raw.every((cell) => isBlank(cell)));
