import { figure } from "../../../functions/wording";
import { isoDate } from "../../../measures/read-date";
import { as } from "../../../measures/quantity";
import { date, type CellTerm, type Term } from "../../../terms/term";
import type { Value } from "./received";
import { isError, isRows } from "./value";

/** A value as a person reads it; a term tells dates and shares apart from plain numbers. */
export function shown(value: Value | undefined, term?: Term): string {
  if (value === undefined) return "not read";
  if (isRows(value)) return shownRows(value);
  if (value === null || value === "") return "blank";
  if (isError(value)) return value.error;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return value;
  if (term?.kind === "date" && Number.isInteger(value) && value > 18_000)
    return isoDate(as(value));
  if (term?.kind === "share") return `${figure(value * 100, 4)} %`;
  return figure(value, 7);
}

function shownRows(rows: Extract<Value, readonly unknown[]>): string {
  const cells = rows.flat();
  const blank = cells.filter((c) => c === null || c === "").length;
  const size = `${cells.length} cells`;
  return blank === 0 ? size : `${size}, ${blank} of them blank`;
}

/** A cell of our sheets tells us no number format, but its label tells a day from a number. */
export const dateTermFor = (label: string | undefined): Term | undefined =>
  /\b(date|day|received|as of|valid from|shipped|paid on|filled on)\b/i.test(
    label ?? "",
  )
    ? aDay
    : undefined;

const aDay = date({ label: "Date", about: "a day", example: "2026-11-25" });

/** What a term allows, as a sentence part: "from 0 to 85 °Bx". */
export function limitsOf(term: Term): string | undefined {
  if (term.kind === "choice") return `one of ${term.choices.join(", ")}`;
  if (term.kind === "yes or no") return "yes or no";
  if (term.kind === "list") return limitsOf(term.of);
  if (!("min" in term || "max" in term || "above" in term || "below" in term))
    return undefined;
  const { min, max, above, below } = term as {
    readonly min?: number;
    readonly max?: number;
    readonly above?: number;
    readonly below?: number;
  };
  const say = (limit: number): string => amount(limit, term);
  if (min !== undefined && max !== undefined)
    return `from ${term.kind === "share" ? say(min) : figure(min)} to ${say(max)}`;
  const low =
    min !== undefined
      ? `${say(min)} or more`
      : above !== undefined
        ? `more than ${say(above)}`
        : undefined;
  const high =
    max !== undefined
      ? `at most ${say(max)}`
      : below !== undefined
        ? `less than ${say(below)}`
        : undefined;
  return [low, high].filter(Boolean).join(" and ") || undefined;
}

function amount(limit: number, term: CellTerm | Term): string {
  if (term.kind === "share") return `${figure(limit * 100)} %`;
  const unit = "unit" in term && term.unit !== "" ? ` ${term.unit}` : "";
  return `${figure(limit)}${unit}`;
}

/** What to type, from the term: "Brix: dissolved solids by mass, at 68 °F. Type it like 66.9, from 0 to 85 °Bx." */
export function howToType(term: Term): string {
  const limits = limitsOf(term);
  const example = term.example === "" ? "" : ` Type it like ${term.example}`;
  const allowed = limits
    ? `${example === "" ? " Allowed is" : ","} ${limits}`
    : "";
  return `${term.label}: ${term.about}.${example}${allowed}${example || allowed ? "." : ""}`;
}
