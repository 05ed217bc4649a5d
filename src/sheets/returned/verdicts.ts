import { type TableKey, tableList } from "../../book/book";
import { columnAt, type Contents } from "../../book/contents";
import { isSameName } from "../../book/keys";
import { newestDayIn } from "../../book/newest-day";
import type { Table } from "../../book/table";
import { CannotAnswer } from "../../measures/cannot-answer";
import { bookColumn } from "../book-cells";
import { type CopyChange, sameValue } from "../compare/compare-workbooks";
import { type Rows, rowsOf } from "../compare/match-rows";
import type { CellValue, Sheet, Stored, Workbook } from "../workbook";
import { bookCell } from "./book-cell";
import { figureAt } from "./figure-at";
import { originOf, type Origin } from "./origins";
import { type LaidOut, sheetBehind } from "./sheet-behind";
import { isSaid } from "./spoken";
import { inputBack, valueBack } from "./value-back";

/** What can be done about one change of a copy that came back. */
export type Verdict =
  | {
      readonly can: "take over";
      readonly sheet: string;
      readonly row: number;
      readonly column: number;
      readonly heading: string;
      readonly holds: Stored;
      readonly value: CellValue;
      /** The book no longer holds what was sent. */
      readonly isMoved: boolean;
    }
  /** An input of a sheet of the book, which the host has to find by its label. */
  | {
      readonly can: "look for";
      readonly behind: LaidOut;
      readonly label: string;
      readonly value: CellValue;
    }
  | { readonly can: "nothing"; readonly why: string };

/** For every change, the book's own cell it would go into, or why it cannot be taken over. Nothing is written. */
export function verdictsOn(
  changes: readonly CopyChange[],
  sent: Workbook,
  contents: readonly Contents[],
): readonly Verdict[] {
  const day = newestDayIn(contents) ?? 0;
  // A sheet is laid out again only where something was changed on it.
  const known = new Map<string, Known>();
  const knownAs = (name: string): Known | undefined => {
    const met = known.get(name);
    const sheet = sent.sheets.find((one) => one.name === name);
    if (met || !sheet) return met;
    const behind = sheetBehind(name, contents);
    const made = { sheet, rows: rowsOf(sheet), behind };
    known.set(name, made);
    return made;
  };
  return changes.map((change) => {
    const own = knownAs(change.sheet);
    if (!own) return nothing("its sheet was not in the copy we sent");
    try {
      return verdictOn(change, own, { contents, day });
    } catch (problem) {
      if (!(problem instanceof CannotAnswer)) throw problem;
      return nothing(problem.message);
    }
  });
}

const nothing = (why: string): Verdict => ({ can: "nothing", why });

interface Known {
  readonly sheet: Sheet;
  readonly rows: Rows;
  readonly behind: ReturnType<typeof sheetBehind>;
}

interface Farm {
  readonly contents: readonly Contents[];
  readonly day: number;
}

function verdictOn(
  change: CopyChange,
  { sheet, rows, behind }: Known,
  farm: Farm,
): Verdict {
  if ("why" in behind) return nothing(behind.why);
  if (behind.kind === "totes")
    return nothing(
      "a statement only shows invoices and payments; enter or correct them under Totes",
    );
  if (behind.kind === "figures") {
    const origin = inCutTable(change, sheet);
    return origin
      ? fromTable(change, origin, farm)
      : nothing("it stands outside the rows of the book that went along");
  }
  const figure = figureAt(behind.description, rows, change.row, change.column);
  if (!figure)
    return nothing(
      typeof change.was === "number" || typeof change.now === "number"
        ? "the open book's sheet has no figure in these words and units, so nothing says where it belongs; type it into the book by hand"
        : "it is a word of the sheet or beside it, no figure of the book",
    );
  if (figure.otherUnit !== undefined)
    return nothing(
      `the copy shows it in another unit (${figure.otherUnit || "none"}) than the book; change it in the book by hand`,
    );
  const origin = originOf(behind, figure, (product) =>
    syrupKind(farm.contents, product),
  );
  switch (origin.in) {
    case "nothing":
      return nothing(origin.why);
    case "table":
      return fromTable(change, origin, farm);
    case "sheet":
      return {
        can: "look for",
        behind,
        label: origin.label,
        value: inputBack(change, origin.rule, origin.label),
      };
  }
}

function fromTable(
  change: CopyChange,
  origin: Extract<Origin, { readonly in: "table" }>,
  { contents, day }: Farm,
): Verdict {
  const cell = bookCell(contents, origin, day);
  if ("why" in cell) return nothing(cell.why);
  const { sheet, row, column, heading, holds, term, hasOwnUnit } = cell;
  const isMoved = !sameValue(holds, change.was);
  if (isMoved && hasOwnUnit)
    return nothing(
      `the book's own cell holds ${String(holds)}, which is not what was sent; change it in ${sheet} by hand`,
    );
  return {
    can: "take over",
    sheet,
    row,
    column,
    heading,
    holds,
    value: valueBack(change, term, heading),
    isMoved,
  };
}

/** Rows of the book's tables that went along are known by their keys. */
function inCutTable(
  { row, column }: CopyChange,
  { tables, cells }: Sheet,
): Extract<Origin, { readonly in: "table" }> | undefined {
  const cut = tables.find(
    ({ area }) =>
      row > area.row &&
      row < area.row + area.rows &&
      column >= area.column &&
      column < area.column + area.columns,
  );
  const found =
    cut && tableList.find(([, { name }]) => isSameName(name, cut.name));
  if (!cut || !found) return undefined;
  const [key, table]: readonly [TableKey, Table] = found;
  // In our own words, whatever language the copy is in.
  const headings = cut.columns.map(
    ({ heading }) =>
      Object.values(table.columns).find((one) => isSaid(one.heading, heading))
        ?.heading ?? heading,
  );
  const own = Object.entries(table.columns).find(
    ([, one]) => columnAt(headings, one) === column - cut.area.column,
  );
  if (!own) return undefined;
  const sentAt = (at: number): Stored =>
    cells.find(
      (cell) => cell.row === row && cell.column === cut.area.column + at,
    )?.value ?? null;
  const keys = table.key.flatMap((part) => {
    const declared = table.columns[part];
    const at = declared ? columnAt(headings, declared) : -1;
    return at < 0 ? [] : [[part, String(sentAt(at) ?? "")] as const];
  });
  return keys.length === 0
    ? undefined
    : {
        in: "table",
        table: key,
        column: own[0],
        row: Object.fromEntries(keys),
      };
}

function syrupKind(contents: readonly Contents[], product: string): string {
  const at = bookColumn(contents, "products", "product").findIndex((code) =>
    isSameName(String(code ?? ""), product),
  );
  return String(bookColumn(contents, "products", "syrupKind")[at] ?? "");
}
