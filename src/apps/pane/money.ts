import { figure, percent } from "../../functions/wording";
import type { Stored } from "../../sheets/workbook";

/** An amount a bottle, as the sheet has it: "$4.6743". An error cell shows its error, a blank one a dash. */
export const perBottle = (value: Stored | undefined): string =>
  typeof value === "number"
    ? signed(value, (v) => `$${fixed(v, 4)}`)
    : otherwise(value);

/** "$56.09", "$12,350.00". */
export const amount = (value: Stored | undefined): string =>
  typeof value === "number"
    ? signed(value, (v) => `$${fixed(v, 2)}`)
    : otherwise(value);

/** "18.4 ¢ more", "3.1 ¢ less", "no gap". */
export function centsApart(
  value: Stored | undefined,
  against: Stored | undefined,
): string {
  if (typeof value !== "number" || typeof against !== "number") return "–";
  const cents = (value - against) * 100;
  if (Math.abs(cents) < 0.05) return "no gap";
  return `${fixed(Math.abs(cents), 1)} ¢ ${cents < 0 ? "less" : "more"}`;
}

export const share = (value: Stored | undefined): string =>
  typeof value === "number"
    ? signed(value, (v) => percent(Math.round(v * 1000) / 1000))
    : otherwise(value);

export const count = (value: Stored | undefined): string =>
  typeof value === "number" ? figure(value, 9) : otherwise(value);

const fixed = (value: number, digits: number): string =>
  value.toLocaleString("en-US", {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });

const signed = (value: number, show: (size: number) => string): string =>
  `${value < 0 ? "−" : ""}${show(Math.abs(value))}`;

function otherwise(value: Stored | undefined): string {
  if (value === null || value === undefined || value === "") return "–";
  return typeof value === "object" ? value.error : String(value);
}
