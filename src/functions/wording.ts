import type { Answer, Answers } from "./define";

/** A figure as a person writes it: a few significant digits, thousands grouped. */
export function figure(value: number | Answer | Answers, digits = 5): string {
  if (typeof value !== "number") return String(value);
  return grouped(digits).format(Number(value.toPrecision(digits)));
}

const formats = new Map<number, Intl.NumberFormat>();

/** Kept, because making a format takes many times longer than using it. */
function grouped(digits: number): Intl.NumberFormat {
  const known = formats.get(digits);
  if (known) return known;
  const format = new Intl.NumberFormat("en-US", {
    maximumFractionDigits: 10,
    maximumSignificantDigits: digits,
  });
  formats.set(digits, format);
  return format;
}

/** "$2,744.50", "18.4 ¢" is written as "$0.184". */
export const dollars = (value: number | Answer | Answers): string =>
  typeof value === "number"
    ? `${value < 0 ? "−" : ""}$${Math.abs(value).toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: Math.abs(value) < 10 ? 4 : 2 })}`
    : String(value);

/** "2 %" for 0.02. */
export const percent = (share: number): string => `${figure(share * 100, 4)} %`;

/** A figure as it was entered, without the noise of a change of unit. */
export const entered = (value: number): string => figure(value, 9);

/** "185 °F" for 85 °C. */
export const fahrenheit = (celsius: number): string =>
  `${entered(celsius * 1.8 + 32)} °F`;
