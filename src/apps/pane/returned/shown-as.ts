import { isDay, isoDate } from "../../../measures/read-date";
import { as, type DaySerial } from "../../../measures/quantity";
import type { Stored } from "../../../sheets/workbook";

/** A cell's value as its number format has it, short: "14.00", "41 %", "2026-11-25", "nothing". */
export function shownAs(value: Stored, format = ""): string {
  if (value === null || value === "") return "nothing";
  if (typeof value === "object") return value.error;
  if (typeof value === "string") return `“${value}”`;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (/yy/i.test(format) && isDay(value)) return isoDate(as<DaySerial>(value));
  if (format.includes("%")) return `${plain(value * 100, 0)} %`;
  return plain(value, (/\.(0+)/.exec(format)?.[1] ?? "").length);
}

/** Typed figures keep their digits; those that were worked out are cut at a millionth. */
const plain = (value: number, least: number): string =>
  Number(value.toPrecision(10)).toLocaleString("en-US", {
    minimumFractionDigits: least,
    maximumFractionDigits: Math.max(least, 6),
  });
