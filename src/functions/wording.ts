import type { Answer, Answers } from "./define";

/** A figure as a person writes it: a few significant digits, thousands grouped. */
export function figure(value: number | Answer | Answers, digits = 5): string {
  if (typeof value !== "number") return String(value);
  const rounded = Number(value.toPrecision(digits));
  return rounded.toLocaleString("en-US", {
    maximumFractionDigits: 10,
    maximumSignificantDigits: digits,
  });
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
