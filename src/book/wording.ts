import type { CellTerm } from "../terms/term";
import type { Column } from "./table";

/** A cell's content as a finding shows it. */
export function shown(content: unknown): string {
  if (content === null || content === undefined || content === "")
    return "blank";
  if (typeof content === "object" && "error" in content)
    return String(content.error);
  return typeof content === "string" ? `"${content}"` : String(content);
}

/** The reader's sentence without the column's name in front, and with the likely slip of a decimal point. */
export function whyUnusable(
  column: Column,
  term: CellTerm,
  content: unknown,
  message: string,
): string {
  if (message === "blank") return `${term.about}, is missing`;
  const prefix = `${column.heading}: `;
  const sentence = message.startsWith(prefix)
    ? message.slice(prefix.length)
    : message;
  const slipped = slip(term, content);
  return slipped === undefined
    ? sentence
    : `${sentence}, perhaps ${slipped} with its decimal point slipped`;
}

/** "type the lot's net weight in lb, for example 10,406" */
export function cellTodo(term: CellTerm): string {
  if (term.kind === "choice") return `pick one of ${term.choices.join(", ")}`;
  if (term.kind === "yes or no") return "type yes or no";
  const unit = unitWords(term);
  return `type ${term.label.toLowerCase()}${unit}, for example ${term.example}`;
}

function unitWords(term: CellTerm): string {
  const unit = "unit" in term ? term.unit : "";
  if (unit === "") return "";
  return term.kind === "money" || term.kind === "number"
    ? ` (${unit})`
    : ` in ${unit}`;
}

function slip(term: CellTerm, content: unknown): number | undefined {
  if (term.kind !== "quantity" || term.dimension !== "brix") return undefined;
  const given = Number(content);
  return [given / 10, given * 10].find(
    (value) =>
      value >= (term.min ?? Infinity) && value <= (term.max ?? -Infinity),
  );
}
