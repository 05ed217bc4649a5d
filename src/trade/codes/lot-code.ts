import { unusable } from "../../measures/cannot-answer";
import type { DaySerial } from "../../measures/quantity";
import { calendarOf, serialOf } from "../../measures/read-date";

/** Hour and minute of the day. */
export interface ClockTime {
  readonly hour: number;
  readonly minute: number;
}

const TOKENS = /YYYY|YY|DDD|[hH][hH][mM][mM]|L/g;
const CLOCK_AND_ITS_DASH = /[-./ ]?[hH][hH][mM][mM]/g;

/**
 * The code for the coder: year (YYYY or YY), day of the year (DDD), line (L), hour and minute (hhmm); anything else in
 * the pattern stands as it is. Without a time its place is left out. Refuses (#VALUE!) a pattern without a day.
 */
export function lotCode(
  day: DaySerial,
  line: string,
  pattern: string,
  time?: ClockTime,
): string {
  if (!pattern.includes("DDD"))
    throw unusable(
      `pattern: "${pattern}" has no day of the year; put DDD where it belongs`,
    );
  const { year } = calendarOf(day);
  const words: Readonly<Record<string, string>> = {
    YYYY: String(year),
    YY: digits(year % 100, 2),
    DDD: digits(dayOfYear(day), 3),
    L: line,
    HHMM: time ? digits(time.hour, 2) + digits(time.minute, 2) : "",
  };
  const asked = time ? pattern : pattern.replace(CLOCK_AND_ITS_DASH, "");
  return asked.replace(TOKENS, (token) => words[token.toUpperCase()] ?? token);
}

/** 1 for 1 January, 366 for 31 December of a leap year. */
export const dayOfYear = (day: DaySerial): number =>
  day - serialOf(calendarOf(day).year, 1, 1) + 1;

const digits = (value: number, count: number): string =>
  String(value).padStart(count, "0");
