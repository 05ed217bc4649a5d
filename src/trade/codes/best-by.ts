import { unusable } from "../../measures/cannot-answer";
import type { DaySerial } from "../../measures/quantity";
import { calendarOf, serialOf } from "../../measures/read-date";

/**
 * The same day of the month so many months on, or the last day of a shorter month. Refuses (#VALUE!) a day beyond the
 * year 9999, where worksheets stop.
 */
export function bestBy(day: DaySerial, months: number): DaySerial {
  const start = calendarOf(day);
  const monthsOn = start.year * 12 + start.month - 1 + months;
  const year = Math.floor(monthsOn / 12);
  const month = (monthsOn % 12) + 1;
  if (year > 9999)
    throw unusable(`months: ${months} months on is beyond the year 9999`);
  const lastDay = calendarOf(previousDay(year, month + 1)).day;
  return serialOf(year, month, Math.min(start.day, lastDay));
}

const previousDay = (year: number, month: number): DaySerial =>
  serialOf(year, month, 0);
