import { isBlank } from "../../functions/read-cell";
import type { CellContent } from "../contents";
import type { Cells, Headings } from "./headings";
import { plainText } from "./written-units";

/** A row below the headings that is no ticket, and why. */
export interface PassedOver {
  /** Counted from 0 in the cells given. */
  readonly row: number;
  readonly why: "a total" | "headings again" | "a line of words";
}

const TOTAL =
  /^(grand |sub ?)?totals?\b|^sous totaux|^sous total|^total general|^somme\b|^sum\b|^carried|^brought|^a reporter|^report\b|^average\b|^moyenne\b/;

/** The rows that can be tickets; totals, repeated headings, words between and blank rows are passed over. */
export function ledgerRows(
  cells: Cells,
  headings: Headings,
): {
  readonly rows: readonly number[];
  readonly passedOver: readonly PassedOver[];
} {
  const passedOver: PassedOver[] = [];
  const rows: number[] = [];
  const start = headings.rows === 0 ? 0 : headings.first + headings.rows;
  for (let row = start; row < cells.length; row += 1) {
    const filled = (cells[row] ?? []).filter((cell) => !isBlank(cell));
    if (filled.length === 0) continue;
    const why = whyNone(filled, headings);
    if (why === undefined) rows.push(row);
    else passedOver.push({ row, why });
  }
  return { rows, passedOver };
}

function whyNone(
  filled: readonly CellContent[],
  headings: Headings,
): PassedOver["why"] | undefined {
  const texts = filled.filter((cell) => typeof cell === "string");
  if (texts.some((text) => TOTAL.test(plainText(text)))) return "a total";
  const known = new Set(headings.columns.map(({ own }) => own.toLowerCase()));
  const again = texts.filter((text) => known.has(text.trim().toLowerCase()));
  if (again.length > 1 && again.length * 2 > filled.length)
    return "headings again";
  if (texts.length === filled.length && filled.length < 3)
    return "a line of words";
  // Sums without a word for them: figures and nothing to call the tote by.
  return texts.length === 0 && filled.length < 4 && headings.columns.length > 5
    ? "a total"
    : undefined;
}
