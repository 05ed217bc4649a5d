import type { Stored } from "../../../src/sheets/workbook";

/** What a cell holds after something was entered in it. */
export interface Entered {
  readonly formula?: string;
  readonly value: Stored;
  /** Marked as text by an apostrophe. */
  readonly quoted?: boolean;
}

const errors = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!)$/;
const looksLikeDate =
  /^(\d{1,4}[-/]\d{1,2}([-/]\d{1,4})?|\d{1,2}[- ]?[A-Za-z]{3,9}([- ]?\d{2,4})?|[A-Za-z]{3,9} \d{1,4}|\d{1,2}:\d{2}(:\d{2})?( ?[AaPp][Mm])?)$/;

/**
 * Entering through the object model parses text as typing does: an apostrophe keeps it as it is, "=" makes a formula,
 * and what looks like a number, day, time, share or truth becomes one. What exactly looks like a day is from memory.
 */
export function entered(raw: unknown): Entered {
  if (typeof raw === "number" || typeof raw === "boolean")
    return { value: raw };
  if (typeof raw !== "string" || raw === "") return { value: null };
  if (raw.startsWith("'")) return { value: raw.slice(1), quoted: true };
  if (/^[=@]/.test(raw) && raw.length > 1)
    return { value: 0, formula: raw.replace(/^@/, "=") };
  if (/^[+-][A-Za-z(]/.test(raw)) return { value: 0, formula: `=${raw}` };
  if (errors.test(raw)) return { value: { error: raw } };
  if (/^(true|false)$/i.test(raw)) return { value: /^true$/i.test(raw) };
  const number = raw.trim().replace(/^\$|,(?=\d{3}\b)/g, "");
  if (/^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/.test(number))
    return { value: Number(number) };
  if (/^[-+]?\d+(\.\d+)?%$/.test(number))
    return { value: Number(number.slice(0, -1)) / 100 };
  if (looksLikeDate.test(raw.trim())) return { value: 45_000 };
  return { value: raw };
}
