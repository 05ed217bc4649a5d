import { unanswerable, unusable } from "../measures/cannot-answer";
import { readDate } from "../measures/read-date";
import { isOrdinary, readNumber } from "../measures/read-number";
import { readQuantity } from "../measures/read-quantity";
import { readPercent, readShare } from "../measures/read-share";
import { fromHouse, unitNamed } from "../measures/units";
import type { CellTerm } from "../terms/term";

/** Reads one cell that is not blank. */
export function readCell(term: CellTerm, raw: unknown, words: string): unknown {
  if (typeof raw === "object" && raw !== null && "error" in raw) {
    throw unusable(`${words}: the cell holds the error ${String(raw.error)}`);
  }
  switch (term.kind) {
    case "text":
      return typeof raw === "boolean"
        ? String(raw).toUpperCase()
        : String(numberOrText(raw, words)).trim();
    case "choice":
      return readChoice(term.choices, raw, words);
    case "yes or no":
      return readYesNo(raw, words);
    case "date":
      return readDate(numberOrText(raw, words), words);
    case "quantity": {
      const unit = unitNamed(term.unit);
      const house = readQuantity(numberOrText(raw, words), unit, words);
      // A number is already in the stated unit; converting it back would add binary noise at a limit.
      const stated = typeof raw === "number" ? raw : fromHouse(house, unit);
      within(term, tidy(stated), words, raw);
      return house;
    }
    case "share": {
      const value = readShare(numberOrText(raw, words), words);
      within(term, value, words, raw);
      return value;
    }
    case "money": {
      const given = numberOrText(raw, words);
      const value =
        typeof given === "number"
          ? given
          : readNumber(given.replace(/^(-?)\$\s*/, "$1"), words);
      within(term, value, words, raw);
      return value;
    }
    case "number": {
      const given = numberOrText(raw, words);
      const value =
        term.unit === "%"
          ? readPercent(given, words)
          : typeof given === "number"
            ? given
            : readNumber(given, words);
      if (term.whole && !Number.isInteger(value))
        throw unusable(`${words}: ${String(raw)} is not a whole number`);
      within(term, value, words, raw);
      return value;
    }
  }
}

function numberOrText(raw: unknown, words: string): number | string {
  if (typeof raw === "number") {
    if (!isOrdinary(raw)) throw unusable(`${words}: not an ordinary number`);
    return raw;
  }
  if (typeof raw === "string") return raw;
  throw unusable(`${words}: ${String(raw).toUpperCase()} is not a number`);
}

function readChoice(
  choices: readonly string[],
  raw: unknown,
  words: string,
): string {
  const typed = String(raw).trim().toLowerCase();
  const found = choices.find((c) => c.toLowerCase() === typed);
  if (found === undefined)
    throw unusable(
      `${words}: "${String(raw)}" is not one of ${choices.map((c) => `"${c}"`).join(", ")}`,
    );
  return found;
}

function readYesNo(raw: unknown, words: string): boolean {
  if (typeof raw === "boolean") return raw;
  const typed = String(raw).trim().toLowerCase();
  if (["yes", "true", "1", "y"].includes(typed)) return true;
  if (["no", "false", "0", "n"].includes(typed)) return false;
  throw unusable(`${words}: "${String(raw)}" is neither yes nor no`);
}

function within(
  term: CellTerm,
  value: number,
  words: string,
  raw: unknown,
): void {
  const limits = term as {
    min?: number;
    max?: number;
    above?: number;
    below?: number;
    unit?: string;
    kind: string;
    beyondIsUnanswerable?: boolean;
  };
  const show = (n: number): string =>
    limits.kind === "share"
      ? `${tidy(n * 100)} %`
      : `${n}${limits.unit ? ` ${limits.unit}` : ""}`;
  const complain = (sentence: string): never => {
    throw (limits.beyondIsUnanswerable ? unanswerable : unusable)(
      `${words}: ${typeof raw === "string" ? raw : show(value)} ${sentence}`,
    );
  };
  if (limits.min !== undefined && value < limits.min)
    complain(`is below ${show(limits.min)}`);
  if (limits.max !== undefined && value > limits.max)
    complain(`is above ${show(limits.max)}`);
  if (limits.above !== undefined && value <= limits.above)
    complain(`must be more than ${show(limits.above)}`);
  if (limits.below !== undefined && value >= limits.below)
    complain(`must be less than ${show(limits.below)}`);
}

export const isBlank = (raw: unknown): boolean =>
  raw === null ||
  raw === undefined ||
  (typeof raw === "string" && raw.trim() === "") ||
  (Array.isArray(raw) && raw.flat().every((cell) => isBlank(cell)));

/** Without the binary noise of a conversion. */
const tidy = (value: number): number => Number(value.toPrecision(12));
