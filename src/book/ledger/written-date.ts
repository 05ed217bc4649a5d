import { calendarOf, serialOf } from "../../measures/read-date";
import type { DaySerial } from "../../measures/quantity";

/** Which of the two stands first where a day is written all in figures. */
export type DateOrder = "day first" | "month first";

/**
 * The days a text may mean: none, one, or two where day and month can be either way. The year is written with two or
 * four figures, months in figures, English or French.
 */
export function datesWritten(
  text: string,
  order?: DateOrder,
): readonly DaySerial[] {
  const plain = plainWords(text);
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(plain);
  if (iso) return existing([[yearOf(iso[1]), Number(iso[2]), Number(iso[3])]]);
  const named =
    /^(\d{1,2})(?:er|st|nd|rd|th)?[-\s./]*([a-z]{3,9})[-\s./,]*(\d{4}|\d{2})$/.exec(
      plain,
    );
  if (named)
    return existing([[yearOf(named[3]), monthOf(named[2]), Number(named[1])]]);
  const american =
    /^([a-z]{3,9})[-\s./]*(\d{1,2})(?:st|nd|rd|th)?[-\s./,]+(\d{4}|\d{2})$/.exec(
      plain,
    );
  if (american)
    return existing([
      [yearOf(american[3]), monthOf(american[1]), Number(american[2])],
    ]);
  const figures = FIGURES.exec(plain);
  if (!figures) return [];
  const [year, a, b] = [
    yearOf(figures[3]),
    Number(figures[1]),
    Number(figures[2]),
  ];
  const monthFirst = existing([[year, a, b]]);
  const dayFirst = existing([[year, b, a]]);
  const chosen = order === "day first" ? dayFirst : monthFirst;
  if (order !== undefined && chosen.length > 0) return chosen;
  return [...new Set([...monthFirst, ...dayFirst])];
}

const FIGURES = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})$/;

/** How days are written in these texts, where at least one of them can only be read one way and none the other way. */
export function dateOrderOf(texts: readonly string[]): DateOrder | undefined {
  let [dayFirst, monthFirst] = [false, false];
  for (const text of texts) {
    const figures = FIGURES.exec(plainWords(text));
    if (!figures) continue;
    if (Number(figures[1]) > 12) dayFirst = true;
    if (Number(figures[2]) > 12) monthFirst = true;
  }
  if (dayFirst === monthFirst) return undefined;
  return dayFirst ? "day first" : "month first";
}

const MONTHS: readonly RegExp[] = [
  /^jan/,
  /^f[e]v|^feb/,
  /^mar/,
  /^avr|^apr/,
  /^mai$|^may$/,
  /^juin$|^jun/,
  /^juil|^jul/,
  /^aou|^aug/,
  /^sep/,
  /^oct/,
  /^nov/,
  /^dec/,
];

const monthOf = (word = ""): number =>
  MONTHS.findIndex((month) => month.test(word)) + 1;

const yearOf = (digits = ""): number =>
  digits.length === 2 ? 2000 + Number(digits) : Number(digits);

/** Lower case, without accents, points after short months and words such as "le" or a weekday. */
const plainWords = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .trim()
    .replace(/^(le\s+|(mon|tue|wed|thu|fri|sat|sun)[a-z]*,?\s+)/, "")
    .replace(/([a-z])\.(?=\s|-|$)/g, "$1")
    .replace(/\s+(\d{1,2}:\d{2}.*)$/, "");

const existing = (
  days: readonly (readonly [year: number, month: number, day: number])[],
): readonly DaySerial[] =>
  days.flatMap(([year, month, day]) => {
    const serial = serialOf(year, month, day);
    const back = calendarOf(serial);
    return back.year === year && back.month === month && back.day === day
      ? [serial]
      : [];
  });
