import { unusable } from "./cannot-answer";
import { as, type DaySerial } from "./quantity";

const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;
const MS_PER_DAY = 86_400_000;
/** Serial 25569 is 1 January 1970, where JavaScript starts counting. */
const UNIX_EPOCH = 25_569;
/** Worksheets count a 29 February 1900 that never was; from the next day on their count is right. */
const FIRST_TRUE_DAY = 61;

/** Reads a day: a worksheet serial number or ISO text "2026-11-25". Other date text is refused (#VALUE!) with the readings it might have had. */
export function readDate(raw: number | string, name: string): DaySerial {
  if (typeof raw === "number") {
    if (!isDay(raw)) {
      throw unusable(
        `${name}: ${raw} is not a worksheet date; type a date such as 2026-11-25`,
      );
    }
    return as<DaySerial>(Math.floor(raw));
  }
  const text = raw.trim();
  const iso = ISO.exec(text);
  if (!iso) throw unusable(`${name}: ${guess(text)}`);
  const [year, month, day] = [Number(iso[1]), Number(iso[2]), Number(iso[3])];
  if (!exists(year, month, day))
    throw unusable(`${name}: there is no day ${text}`);
  const serial = serialOf(year, month, day);
  if (serial < FIRST_TRUE_DAY)
    throw unusable(
      `${name}: ${text} is before 1900-03-01, where worksheet dates begin to be true`,
    );
  return serial;
}

/** Worksheets count days up to the end of the year 9999. */
export const isDay = (serial: number): boolean =>
  serial >= 1 && serial < 2_958_466;

function exists(year: number, month: number, day: number): boolean {
  const back = calendarOf(serialOf(year, month, day));
  return back.year === year && back.month === month && back.day === day;
}

export const serialOf = (year: number, month: number, day: number): DaySerial =>
  as<DaySerial>(Date.UTC(year, month - 1, day) / MS_PER_DAY + UNIX_EPOCH);

export function calendarOf(serial: DaySerial): {
  readonly year: number;
  readonly month: number;
  readonly day: number;
} {
  const date = new Date((serial - UNIX_EPOCH) * MS_PER_DAY);
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
  };
}

/** "2026-11-25" for a serial. */
export function isoDate(serial: DaySerial): string {
  const { year, month, day } = calendarOf(serial);
  return [String(year).padStart(4, "0"), two(month), two(day)].join("-");
}

const two = (n: number): string => String(n).padStart(2, "0");

function guess(text: string): string {
  const slashed = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4})$/.exec(text);
  if (!slashed) return `"${text}" is not a date; type it as 2026-11-25`;
  const [a, b, year] = [
    Number(slashed[1]),
    Number(slashed[2]),
    Number(slashed[3]),
  ] as const;
  const readings = (
    [
      [a, b],
      [b, a],
    ] as const
  ).filter(([month, day]) => exists(year, month, day));
  const shown = [
    ...new Set(
      readings.map(([month, day]) => isoDate(serialOf(year, month, day))),
    ),
  ];
  if (shown.length === 0)
    return `"${text}" is not a date; type it as 2026-11-25`;
  return shown.length > 1
    ? `"${text}" could be ${shown.join(" or ")}; type the one you mean`
    : `"${text}" reads as ${shown[0]}; type it that way`;
}
