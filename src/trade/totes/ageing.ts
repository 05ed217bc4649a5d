import { toCents } from "../../measures/money";
import type { DaySerial, Money } from "../../measures/quantity";

/** How late money is, from not due at all to longest. */
export const ageBands = [
  "not due",
  "1-30",
  "31-60",
  "61-90",
  "over 90",
] as const;
export type AgeBand = (typeof ageBands)[number];

/** Days between the due day and the day paid, or today while it is open; 0 when not late, or when nothing is owed. */
export const daysLate = (
  due: DaySerial,
  paidOrToday: DaySerial,
  balance?: Money,
): number =>
  balance !== undefined && toCents(balance) <= 0
    ? 0
    : Math.max(0, paidOrToday - due);

/** On its due day money is not late yet. Bands of 30 days are common practice, no source. */
export function ageBand(due: DaySerial, today: DaySerial): AgeBand {
  const late = daysLate(due, today);
  if (late === 0) return "not due";
  if (late <= 30) return "1-30";
  if (late <= 60) return "31-60";
  return late <= 90 ? "61-90" : "over 90";
}
