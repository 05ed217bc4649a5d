import { unusable } from "../measures/cannot-answer";
import type { ClockTime } from "../trade/codes/lot-code";

/** Reads a time of day: "14:30", or the part of a day that a worksheet keeps behind a time cell. */
export function readClockTime(text: string): ClockTime {
  const clock = /^([01]?\d|2[0-3]):([0-5]\d)(?::[0-5]\d)?$/.exec(text);
  if (clock) return { hour: Number(clock[1]), minute: Number(clock[2]) };
  const dayPart = Number(text);
  if (text !== "" && dayPart >= 0 && dayPart < 1) {
    // A worksheet time lies a hair beside its minute; the hair must not take a minute off.
    const minutes = Math.floor(dayPart * 1440 + 1e-6);
    return { hour: Math.floor(minutes / 60) % 24, minute: minutes % 60 };
  }
  throw unusable(`time: "${text}" is not a time of day such as 14:30`);
}
