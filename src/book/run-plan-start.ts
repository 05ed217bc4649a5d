import { unusable } from "../measures/cannot-answer";
import { as, type DaySerial } from "../measures/quantity";
import { isoDate, readDate } from "../measures/read-date";

const DAY_AND_TIME = /^(\S+?)(?:T|\s+)([01]?\d|2[0-3]):([0-5]\d)$/i;

/** Reads when a run begins, "2026-11-26T07:00" or "2026-11-26 07:00", as a worksheet day with its part of a day. Refuses (#VALUE!) anything else. */
export function readStart(typed: string, name: string): number {
  const match = DAY_AND_TIME.exec(typed.trim());
  if (!match)
    throw unusable(
      `${name}: "${typed.trim()}" is not a day and a time; type them as 2026-11-26T07:00`,
    );
  const [, day = "", hour, minute] = match;
  return readDate(day, name) + (Number(hour) * 60 + Number(minute)) / 1440;
}

/** "2026-11-26T07:00" for a worksheet day with its part of a day, to the nearest minute. */
export function startText(moment: number): string {
  const minutes = Math.round(moment * 1440);
  const day = as<DaySerial>(Math.floor(minutes / 1440));
  const two = (n: number): string => String(n).padStart(2, "0");
  const ofDay = minutes % 1440;
  return `${isoDate(day)}T${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`;
}
