import { columnLetters } from "../address";
import type { Cell, Sheet, Stored, Workbook } from "../workbook";
import { matchRows, type RowMatch, type Rows, rowsOf } from "./match-rows";
import { comparableFormula } from "./same-formula";

/** One difference between a copy as sent and as it came back, in the words of the sheet. */
export interface CopyChange {
  readonly sheet: string;
  /** Where the cell stands in the copy as sent; rows and columns count from 0. */
  readonly row: number;
  readonly column: number;
  /** The row's and the column's own words: "Margin goal", "Needed · Glass bottle". */
  readonly what: string;
  readonly kind:
    | "changed"
    | "filled in"
    | "cleared"
    | "formula changed"
    | "formula replaced by a figure"
    | "figure replaced by a formula"
    | "figure came back as text";
  readonly was: Stored;
  readonly now: Stored;
  readonly formulaWas?: string;
  readonly formulaNow?: string;
}

export interface Comparison {
  readonly changes: readonly CopyChange[];
  /** Sentences about sheets and rows that cannot be matched. */
  readonly unmatched: readonly string[];
}

/** Compares a copy that came back with what was sent, cell by cell; results that only follow from a change are not listed. */
export function compareWorkbooks(
  sent: Workbook,
  returned: Workbook,
): Comparison {
  const sheets = sent.sheets.map((sheet) => {
    const back = returned.sheets.find(
      ({ name }) => name.toLowerCase() === sheet.name.toLowerCase(),
    );
    const before = rowsOf(sheet);
    const after = back ? rowsOf(back) : undefined;
    return {
      sheet,
      before,
      after,
      match: after ? matchRows(before, after) : undefined,
    };
  });
  const rowNow = (sheet: string, row: number): number => {
    const match = sheets.find(
      (s) => s.sheet.name.toLowerCase() === sheet.toLowerCase(),
    )?.match;
    return match?.pairs.get(row) ?? movedWith(match, row);
  };
  const known = new Set(sent.sheets.map(({ name }) => name.toLowerCase()));
  return {
    changes: sheets.flatMap(({ sheet, before, after, match }) =>
      after && match ? changesIn(sheet, before, after, match, rowNow) : [],
    ),
    unmatched: [
      ...sheets.flatMap(({ sheet, before, after, match }) =>
        after && match
          ? shapeOf(sheet.name, before, after, match)
          : [`The sheet "${sheet.name}" did not come back.`],
      ),
      ...returned.sheets
        .filter(({ name }) => !known.has(name.toLowerCase()))
        .map(({ name }) => `The sheet "${name}" was not in the copy we sent.`),
    ],
  };
}

/** A blank row moves with the last row above it that is not blank. */
function movedWith(match: RowMatch | undefined, row: number): number {
  for (let above = row - 1; above >= 0; above -= 1) {
    const there = match?.pairs.get(above);
    if (there !== undefined) return there + (row - above);
  }
  return row;
}

function shapeOf(
  name: string,
  before: Rows,
  after: Rows,
  { gone, added }: RowMatch,
): readonly string[] {
  return [
    ...gone.map(
      (row) =>
        `Sheet "${name}": row ${row + 1} as sent (${wordsOf(before.get(row))}) is not in the copy that came back.`,
    ),
    ...added.map(
      (row) =>
        `Sheet "${name}": row ${row + 1} of the copy that came back (${wordsOf(after.get(row))}) was not in what we sent.`,
    ),
  ];
}

function wordsOf(row: ReadonlyMap<number, Cell> | undefined): string {
  const cells = [...(row?.values() ?? [])].sort((a, b) => a.column - b.column);
  const [first] = cells.filter(
    ({ value }) => typeof value === "string" && value.trim() !== "",
  );
  return first ? `"${String(first.value)}"` : "figures only";
}

function changesIn(
  sheet: Sheet,
  before: Rows,
  after: Rows,
  match: RowMatch,
  rowNow: (sheet: string, row: number) => number,
): readonly CopyChange[] {
  return [...match.pairs].flatMap(([row, rowAfter]) => {
    const was = before.get(row) ?? new Map<number, Cell>();
    const now = after.get(rowAfter) ?? new Map<number, Cell>();
    const columns = [...new Set([...was.keys(), ...now.keys()])].sort(
      (a, b) => a - b,
    );
    return columns.flatMap((column) => {
      const difference = differenceOf(
        was.get(column),
        now.get(column),
        (formula) => comparableFormula(formula, sheet.name, rowNow),
        (formula) => comparableFormula(formula, sheet.name, (_, r) => r),
      );
      return difference
        ? [
            {
              sheet: sheet.name,
              row,
              column,
              what: whatIsAt(before, row, column),
              ...difference,
            },
          ]
        : [];
    });
  });
}

type Difference = Omit<CopyChange, "sheet" | "row" | "column" | "what">;

function differenceOf(
  was: Cell | undefined,
  now: Cell | undefined,
  moved: (formula: string) => string,
  plain: (formula: string) => string,
): Difference | undefined {
  const values = { was: was?.value ?? null, now: now?.value ?? null };
  const formulas = {
    ...(was?.formula === undefined ? {} : { formulaWas: was.formula }),
    ...(now?.formula === undefined ? {} : { formulaNow: now.formula }),
  };
  const found = (kind: CopyChange["kind"]): Difference => ({
    kind,
    ...values,
    ...formulas,
  });
  if (was?.formula !== undefined && now?.formula !== undefined)
    return moved(was.formula) === plain(now.formula)
      ? undefined
      : found("formula changed");
  if (was?.formula !== undefined)
    return found(
      values.now === null ? "cleared" : "formula replaced by a figure",
    );
  if (now?.formula !== undefined) return found("figure replaced by a formula");
  if (sameValue(values.was, values.now)) return undefined;
  if (values.was === null) return found("filled in");
  if (values.now === null) return found("cleared");
  return found(
    typeof values.was === "number" && typeof values.now === "string"
      ? "figure came back as text"
      : "changed",
  );
}

/** Whether two cells hold the same: numbers to what a file keeps of them, a blank and no text alike. */
export function sameValue(a: Stored, b: Stored): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  if (
    a !== null &&
    b !== null &&
    typeof a === "object" &&
    typeof b === "object"
  )
    return a.error === b.error;
  return a === b || (isBlank(a) && isBlank(b));
}

const isBlank = (value: Stored): boolean => value === null || value === "";

/** The words that stand before the cell in its row, and above it where it is one of several. */
function whatIsAt(rows: Rows, row: number, column: number): string {
  const label = [...(rows.get(row)?.values() ?? [])]
    .filter((cell) => cell.column < column && isWord(cell))
    .sort((a, b) => a.column - b.column)[0];
  const heading = headingOver(rows, row, column);
  const parts = [label, heading].flatMap((cell) =>
    cell ? [String(cell.value).trim()] : [],
  );
  return parts.length > 0
    ? parts.join(" · ")
    : `cell ${columnLetters(column)}${row + 1}`;
}

/** The nearest words above in the same column, unless the row above is a labelled row itself. */
function headingOver(
  rows: Rows,
  row: number,
  column: number,
): Cell | undefined {
  for (let above = row - 1; above >= 0; above -= 1) {
    const line = rows.get(above);
    if (!line) return undefined;
    const cell = line.get(column);
    const words = [...line.values()].filter(isWord);
    if (cell && isWord(cell) && words.length > 2) return cell;
  }
  return undefined;
}

const isWord = ({ formula, value }: Cell): boolean =>
  formula === undefined && typeof value === "string" && value.trim() !== "";
