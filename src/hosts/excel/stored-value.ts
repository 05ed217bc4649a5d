import type { Stored } from "../../sheets/workbook";

/** What is entered to make a cell hold this value and nothing else, in any country's Excel. */
export function toEnter(value: Stored | undefined): string | number | boolean {
  if (value === undefined || value === null) return "";
  if (typeof value === "object") return value.error;
  return typeof value === "string" && isReadAsOther(value)
    ? `'${value}`
    : value;
}

/**
 * Excel reads entered text as typing: "0042" becomes 42 and "3/4" a day, each country in its own way. Text with a
 * digit, or that starts like a formula, is therefore marked as text.
 */
const isReadAsOther = (text: string): boolean =>
  /\d|^[=+\-@'#]|^\s*(true|false)\s*$/i.test(text);

/** A cell's value as read, by the type Excel says it has. */
export function storedFrom(value: unknown, type: unknown): Stored {
  switch (type) {
    case "Empty":
      return null;
    case "Error":
      return { error: String(value) };
    default:
      return typeof value === "number" ||
        typeof value === "string" ||
        typeof value === "boolean"
        ? value
        : null;
  }
}

/** All of a loaded range. */
export const storedIn = (
  range: Pick<Excel.Range, "values" | "valueTypes">,
): readonly (readonly Stored[])[] =>
  range.values.map((row: readonly unknown[], r) =>
    row.map((value, c) => storedFrom(value, range.valueTypes[r]?.[c])),
  );

/** The formula of a cell, if it is one: text marked as text reads the same in both. */
export const formulaIn = (
  formula: unknown,
  value: unknown,
): string | undefined =>
  typeof formula === "string" && formula.startsWith("=") && formula !== value
    ? formula
    : undefined;

/** What of a range `storedIn` and `formulaIn` need. */
export const cellProperties = "formulas,values,valueTypes";
export const valueProperties = "values,valueTypes";
