import { bookTables } from "../book/book";
import { type CellContent, type Contents, contentsOf } from "../book/contents";
import { termNamed } from "../book/named-value";
import { placeParts } from "../book/references";
import type { Column } from "../book/table";
import { serialOf } from "../measures/read-date";
import type { CellTerm } from "../terms/term";
import { fixedAddress, sheetReference } from "./address";
import type { Area, Validation } from "./workbook";

const DATE = "yyyy-mm-dd";

/** The number format of a column; where the row's name decides what a value is, that row's own. */
export function formatOf(column: Column, rowName: unknown): string {
  if (column.format !== undefined) return column.format;
  const term = column.byName ? termNamed(column.byName, rowName) : column.term;
  if (column.byName) return term?.kind === "date" ? DATE : "General";
  return term === undefined ? "General" : termFormat(term);
}

function termFormat(term: CellTerm): string {
  switch (term.kind) {
    case "date":
      return DATE;
    case "text":
      // Without it a worksheet makes a day of a lot called 26-03.
      return "@";
    case "share":
      return "0.0%";
    case "money":
      return "#,##0.00";
    case "number":
      return term.whole ? "#,##0" : "General";
    case "quantity":
      return term.unit === "lb"
        ? "#,##0"
        : term.dimension === "brix"
          ? "0.0"
          : "General";
    default:
      return "General";
  }
}

/** What a heading's note says: the meaning, the unit, an example. */
export function columnNote(column: Column): string {
  const { term } = column;
  const unit = unitOf(term);
  const lines = [
    `${capital(term.about)}.`,
    ...(unit === "" ? [] : [`In ${unit}.`]),
    ...(term.kind === "choice" ? [`One of: ${term.choices.join(", ")}.`] : []),
    column.formula === undefined
      ? column.byName === undefined
        ? `Example: ${term.example}`
        : ""
      : "Worked out by the sheet; nothing to type.",
    ...(column.formula === undefined && column.mayBeBlank
      ? ["May be left blank."]
      : []),
    ...(column.blankIs === undefined
      ? []
      : [`A blank counts as ${column.blankIs}.`]),
  ];
  return lines.filter((line) => line !== "").join("\n");
}

function unitOf(term: CellTerm): string {
  if (term.kind === "share") return "percent (18 % or 0.18)";
  if (!("unit" in term) || term.unit === "") return "";
  return term.kind === "money" ? `money ${term.unit}` : term.unit;
}

/** Wide enough for its longest value and for the longest word of its heading with the filter button. */
export function columnWidth(
  column: Column,
  values: readonly CellContent[],
): number {
  const word = Math.max(...column.heading.split(" ").map((w) => w.length));
  const longest = Math.max(
    0,
    ...values.map((value) => (typeof value === "string" ? value.length : 0)),
  );
  return Math.min(46, Math.max(column.width ?? 10, word + 4, longest + 2));
}

/** Height in points for the heading with the most lines. */
export const headingHeight = (
  columns: readonly Column[],
  widths: readonly number[],
): number =>
  4 +
  15 *
    Math.max(
      ...columns.map((column, c) =>
        linesOf(column.heading, (widths[c] ?? 10) - 3),
      ),
    );

function linesOf(heading: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (const word of heading.split(" ")) {
    if (used > 0 && used + 1 + word.length > width) {
      lines += 1;
      used = word.length;
    } else used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines;
}

/** What may be typed into a column: the term's choices and limits, or the names of the table it refers to. */
export function validationOf(
  column: Column,
  area: Area,
  given: readonly Contents[],
): readonly Validation[] {
  if (column.formula !== undefined || column.byName !== undefined) return [];
  const message = validationMessage(column);
  const names = column.refersTo && namesRange(column.refersTo, given);
  // A new name may be typed before its own row exists, so it is only questioned.
  if (names !== undefined)
    return [
      {
        area,
        rule: { kind: "list from", source: names },
        strict: false,
        message,
      },
    ];
  const rule = ruleOf(column.term);
  return rule === undefined ? [] : [{ area, rule, strict: true, message }];
}

function ruleOf(term: CellTerm): Validation["rule"] | undefined {
  switch (term.kind) {
    case "choice":
      return { kind: "list", choices: term.choices };
    case "yes or no":
      return { kind: "list", choices: ["yes", "no"] };
    case "date":
      return {
        kind: "date",
        min: serialOf(1990, 1, 1),
        max: serialOf(2100, 12, 31),
      };
    case "text":
      return undefined;
    default: {
      const min = term.min ?? term.above;
      const max = term.max ?? term.below;
      return {
        kind: term.kind === "number" && term.whole ? "whole number" : "number",
        ...(min === undefined ? {} : { min }),
        ...(max === undefined ? {} : { max }),
      };
    }
  }
}

const validationMessage = ({ term }: Column): string => {
  const unit = unitOf(term);
  return `${capital(term.about)}${unit === "" ? "" : `, in ${unit}`}; for example ${term.example}`;
};

/** The first of the tables whose names are meant; a list can come from one range only. */
function namesRange(
  places: readonly [string, ...string[]],
  given: readonly Contents[],
): string | undefined {
  if (places.length > 1) return undefined;
  const [tableKey, key] = placeParts(places[0]);
  const table = bookTables[tableKey];
  const column = Object.keys(table.columns).indexOf(key);
  const rows = Math.max(1, contentsOf(given, table)?.rows.length ?? 0);
  return `${sheetReference(table.sheet)}!${fixedAddress(1, column)}:${fixedAddress(rows, column)}`;
}

const capital = (words: string): string =>
  words.charAt(0).toUpperCase() + words.slice(1);
