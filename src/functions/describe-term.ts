import type { CellTerm, OptionalCell, Term } from "../terms/term";
import { figure } from "./wording";

export interface Described {
  readonly unit: string;
  /** What may be typed, in words: "0-85 °Bx", "one of lb, kg". */
  readonly allowed: string;
}

/** The unit and the limits of an argument in plain words. */
export function describeTerm(term: Term): Described {
  if (term.kind === "list")
    return {
      ...describeTerm(term.of),
      allowed: `one column or row: ${describeTerm(term.of).allowed}`,
    };
  if (term.kind === "rows")
    return {
      unit: "rows",
      allowed: `columns in this order: ${Object.entries(term.columns).map(describeColumn).join("; ")}`,
    };
  return { unit: unitOf(term), allowed: allowedIn(term) };
}

function describeColumn([name, term]: readonly [
  string,
  CellTerm | OptionalCell,
]): string {
  const unit = unitOf(term);
  const blank = "mayBeBlank" in term ? "may be blank" : "";
  const said = [unit, blank].filter(Boolean).join(", ");
  return `${name.replace(/_/g, " ")}${said ? ` (${said})` : ""}`;
}

function unitOf(term: CellTerm): string {
  switch (term.kind) {
    case "quantity":
    case "number":
      return term.unit;
    case "money":
      return term.unit ? `money ${term.unit}` : "money";
    case "share":
      return "share";
    default:
      return term.kind;
  }
}

function allowedIn(term: CellTerm): string {
  switch (term.kind) {
    case "choice":
      return `one of ${term.choices.map((c) => `"${c}"`).join(", ")}`;
    case "yes or no":
      return "yes or no";
    case "date":
      return 'a worksheet date, or text such as "2026-11-25"';
    case "text":
      return "text";
    default:
      return limits(term);
  }
}

function limits(term: Exclude<CellTerm, { readonly kind: "text" }>): string {
  const { min, max, above, below } = term as {
    readonly min?: number;
    readonly max?: number;
    readonly above?: number;
    readonly below?: number;
  };
  const unit = "unit" in term ? term.unit : "";
  const show = (n: number): string =>
    term.kind === "share" ? `${figure(n * 100)} %` : figure(n, 9);
  const whole = term.kind === "number" && term.whole ? "whole, " : "";
  const low =
    min !== undefined
      ? `${show(min)} or more`
      : above !== undefined
        ? `more than ${show(above)}`
        : "";
  const high =
    below !== undefined
      ? `less than ${show(below)}`
      : max !== undefined
        ? `${show(max)} at most`
        : "";
  const said =
    min !== undefined && max !== undefined && below === undefined
      ? `${show(min)} to ${show(max)}`
      : [low, high].filter(Boolean).join(", ");
  const withUnit =
    said && unit && term.kind === "quantity" ? `${said} ${unit}` : said;
  return `${whole}${withUnit || "any number"}`;
}
