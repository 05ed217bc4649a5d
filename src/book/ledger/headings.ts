import { isBlank } from "../../functions/read-cell";
import type { CellContent } from "../contents";
import { roleInHeading } from "./roles";

export type Cells = readonly (readonly CellContent[])[];

/** Where the headings of a ledger stand and what each column's says, words of the rows above it included. */
export interface Headings {
  readonly first: number;
  /** 0 where the cells have no headings at all. */
  readonly rows: number;
  /** One a column: all words, and those of its lowest row alone. */
  readonly columns: readonly {
    readonly all: string;
    readonly own: string;
  }[];
}

/** Headings are looked for among the first rows; titles, dates and addresses may stand above them. */
const LOOKED_AT = 25;
const MOST_ROWS = 3;

/** Finds the heading rows: those whose words name the most different parts of a ticket. */
export function headingsOf(cells: Cells): Headings {
  const width = cells.reduce((most, row) => Math.max(most, row.length), 0);
  let best = { score: 0, found: none(width) };
  for (let first = 0; first < Math.min(LOOKED_AT, cells.length); first += 1)
    for (let rows = 1; rows <= MOST_ROWS; rows += 1) {
      const found = headingsAt(cells, first, rows, width);
      if (!found) break;
      // Each row more must earn its place; of equals the lowest single row counts.
      const score = rolesNamed(found) - (rows - 1) * 0.5;
      if (score > best.score) best = { score, found };
    }
  return best.score >= 2 ? best.found : none(width);
}

const none = (width: number): Headings => ({
  first: 0,
  rows: 0,
  columns: Array.from({ length: width }, () => ({ all: "", own: "" })),
});

const rolesNamed = ({ columns }: Headings): number =>
  new Set(
    columns.flatMap(({ all, own }) => {
      const role = (roleInHeading(own) ?? roleInHeading(all))?.role;
      return role === undefined ? [] : [role];
    }),
  ).size;

function headingsAt(
  cells: Cells,
  first: number,
  rows: number,
  width: number,
): Headings | undefined {
  const taken = cells.slice(first, first + rows);
  if (taken.length < rows || !taken.every(isAllWords)) return undefined;
  const upper = taken.slice(0, -1).map(carriedRight);
  const last = taken.at(-1) ?? [];
  return {
    first,
    rows,
    columns: Array.from({ length: width }, (_, c) => {
      const own = wordsOf(last[c]);
      const above = upper.map((row, r) =>
        // A heading that stands alone in an upper row belongs to its own column only.
        own === "" ? wordsOf(taken[r]?.[c]) : (row[c] ?? ""),
      );
      const all = [...new Set([...above, own])].filter(Boolean).join(" ");
      return { all, own: own || all };
    }),
  };
}

/** A heading row holds text only, and more than one cell of it. */
function isAllWords(row: readonly CellContent[]): boolean {
  const filled = row.filter((cell) => !isBlank(cell));
  return (
    filled.length > 1 &&
    filled.every(
      (cell) => typeof cell === "string" && !/^[\d\s.,/-]+$/.test(cell),
    )
  );
}

/** The words of a group stand in its first cell, merged or not. */
function carriedRight(row: readonly CellContent[]): readonly string[] {
  let words = "";
  return row.map((cell) => {
    words = wordsOf(cell) || words;
    return words;
  });
}

const wordsOf = (cell: CellContent | undefined): string =>
  typeof cell === "string" ? cell.replace(/\s+/g, " ").trim() : "";
