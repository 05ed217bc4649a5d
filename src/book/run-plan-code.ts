import { answerOrNone } from "../measures/cannot-answer";
import { as, type DaySerial } from "../measures/quantity";
import { lotCode } from "../trade/codes/lot-code";
import type { Book } from "./book";
import { setting } from "./setting";

/** The pattern where the farm has entered none. */
export const USUAL_PATTERN = "YYDDD-L-HHMM";

/** The code to key in when a run begins on a line; undefined without a start, a line, or a day in the pattern. */
export function plannedLotCode(
  book: Book,
  line: string | undefined,
  start: number | undefined,
): string | undefined {
  if (line === undefined || start === undefined) return undefined;
  const minutes = Math.floor((start - Math.floor(start)) * 1440 + 1e-6);
  return answerOrNone(() =>
    lotCode(
      as<DaySerial>(Math.floor(start)),
      lineLetters(line),
      setting(book, "Lot code pattern") ?? USUAL_PATTERN,
      { hour: Math.floor(minutes / 60), minute: minutes % 60 },
    ),
  );
}

/** "SP" for Small pair: a lot code has no room for a line's whole name. */
export function lineLetters(line: string): string {
  const [first = "", second = ""] = line.trim().split(/\s+/);
  return (first.charAt(0) + second.charAt(0)).toUpperCase();
}
