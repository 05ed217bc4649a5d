import type { Area } from "../workbook";
import {
  type Audience,
  shows,
  standIns,
  type Ticks,
  tryRule,
} from "./audiences";
import { type Figure, figuresOf } from "./figures";
import { formulaText, readsOf, type Reads } from "./reads";
import type { SheetToCopy } from "./sheet-to-copy";
import { type Topic, topicOf, topics } from "./topics";

/** What becomes of a figure in a copy. `fixed` keeps its value and loses its formula; `blank` rows have nothing to show. */
export type Fate =
  "input" | "live" | "as it is" | "fixed" | "removed" | "blank";

export interface FigureFate {
  readonly figure: Figure;
  readonly topic: Topic | undefined;
  readonly fate: Fate;
  /** Why it was removed or fixed, in trade words. */
  readonly why?: string;
  /** The formula of a live figure, names in braces. */
  readonly formula?: string;
}

/** Whether the copy may carry a column of one of the book's tables. */
export type TableAllowed = (table: string, column: string) => boolean;

interface Known extends Pick<FigureFate, "figure" | "topic"> {
  readonly text: string | undefined;
  readonly reads: Reads;
  readonly isShown: boolean;
}

/** Decides for every figure of a sheet whether the copy keeps it, and whether it can stay alive there. */
export function fatesOf(
  sheet: SheetToCopy,
  audience: Audience,
  ticks: Ticks,
  allowed: TableAllowed,
): readonly FigureFate[] {
  const { placed, kind, valueAt, topicOfRow } = sheet;
  const known: readonly Known[] = figuresOf(placed).map((figure) => {
    const rowTopic = topicOfRow?.(
      figure.name.split(".")[0] ?? "",
      figure.index,
    );
    const own = figure.name === "title" ? "day" : topicOf(kind, figure.name);
    const mayOwn = shows(audience, ticks, own);
    const topic = mayOwn && rowTopic !== undefined ? rowTopic : own;
    const text = withStandIns(formulaText(figure.content), figure.name, sheet);
    return {
      figure,
      topic,
      text,
      reads: readsOf(figure, text, placed.places),
      isShown: shows(audience, ticks, topic),
    };
  });
  const grid = new Grid(known);
  const blank = (cell: Known): boolean =>
    isBlank(valueAt(cell.figure.row, cell.figure.column));
  const missing = (cell: Known, emptied: ReadonlySet<string>) =>
    firstMissing(cell, grid, allowed, emptied);

  const tried = new Set<string>();
  const inputs = known.filter((c) => c.isShown && c.figure.role === "input");
  const typedOver = known.filter(
    (c) => c.isShown && tryRule(kind, c.figure.name) !== undefined,
  );
  const moved = new Set<Known>();
  const without = new Map<Known, string>();
  for (const candidate of [...inputs, ...typedOver]) {
    // Typing over a figure that follows from another input would cut it off.
    if (
      moved.has(candidate) ||
      (blank(candidate) && candidate.figure.role !== "input")
    )
      continue;
    const followers = grid.followers(candidate);
    const stopped = [...followers]
      .filter((cell) => cell.isShown && !tried.has(cell.figure.id))
      .map((cell) => ({ cell, reason: missing(cell, new Set()) }))
      .find(({ reason }) => reason !== undefined);
    if (stopped?.reason !== undefined) {
      without.set(
        candidate,
        `"${stopped.cell.figure.label}" follows it through ${stopped.reason}`,
      );
      continue;
    }
    if (![...followers].some((cell) => cell.isShown)) continue;
    tried.add(candidate.figure.id);
    for (const follower of followers) moved.add(follower);
  }

  const emptied = emptyRows(
    known,
    blank,
    (cell) => moved.has(cell) || tried.has(cell.figure.id),
  );
  return known.map((cell): FigureFate => {
    const { figure, topic, text, reads, isShown } = cell;
    const is = (fate: Fate, more: Partial<FigureFate> = {}): FigureFate => ({
      figure,
      topic,
      fate,
      ...more,
    });
    if (!isShown)
      return is("removed", {
        why: topic === undefined ? FARM_ONLY : topics[topic],
      });
    if (emptied.has(figure.id)) return is("blank");
    if (tried.has(figure.id)) return is("input");
    if (text === undefined)
      return figure.role === "input"
        ? is("fixed", { why: whyFixed(without.get(cell)) })
        : is("as it is");
    const gap = missing(cell, emptied);
    if (gap !== undefined) return is("fixed", { why: `reads ${gap}` });
    if (reads.tables.length > 0 && !moved.has(cell))
      return is("fixed", {
        why: "stands in the book, and nothing that can be tried moves it",
      });
    if (figure.role === "input")
      return is("fixed", { why: whyFixed(without.get(cell)) });
    return is("live", { formula: text });
  });
}

const FARM_ONLY = "for the farm alone";

const whyFixed = (reason: string | undefined): string =>
  reason ?? "nothing in this copy follows it";

function withStandIns(
  text: string | undefined,
  name: string,
  { kind }: SheetToCopy,
): string | undefined {
  const own = standIns[kind]?.filter(({ within }) => within.test(name)) ?? [];
  if (text === undefined || own.length === 0) return text;
  return text.replace(
    /\{([\w.]+)\}/g,
    (whole, read: string) =>
      own.find((one) => one.name === read)?.text ?? whole,
  );
}

export const isBlank = (value: unknown): boolean =>
  value === null || value === undefined || value === "";

/** The first thing a figure's formula reads that the copy does not hold, in words. */
function firstMissing(
  { reads }: Known,
  grid: Grid,
  allowed: TableAllowed,
  emptied: ReadonlySet<string>,
): string | undefined {
  if (reads.otherSheets) return "another sheet, which stays at the farm";
  for (const { table, column } of reads.tables)
    if (!allowed(table, column)) return `the table ${table}`;
  for (const area of reads.areas)
    for (const cell of grid.within(area))
      if (!cell.isShown && !emptied.has(cell.figure.id))
        return `"${cell.figure.label}" (${cell.topic === undefined ? FARM_ONLY : topics[cell.topic]})`;
  return undefined;
}

/** Rows of a table with nothing in them but perhaps a name, which no input moves. */
function emptyRows(
  known: readonly Known[],
  blank: (cell: Known) => boolean,
  moves: (cell: Known) => boolean,
): ReadonlySet<string> {
  const rows = new Map<string, Known[]>();
  for (const cell of known)
    if (cell.figure.self && !cell.figure.self.across) {
      const key = `${cell.figure.block}#${cell.figure.index}`;
      rows.set(key, [...(rows.get(key) ?? []), cell]);
    }
  const empty = [...rows.values()].filter((cells) => {
    const shown = cells.filter(({ isShown }) => isShown);
    const [first, ...rest] = shown;
    if (first === undefined || moves(first)) return false;
    return (
      shown.every(blank) ||
      (rest.length > 0 && rest.every((cell) => blank(cell) && !moves(cell)))
    );
  });
  return new Set(empty.flat().map(({ figure }) => figure.id));
}

/** The figures of a sheet by their cells, and who follows whom. */
class Grid {
  readonly #byCell = new Map<string, Known>();
  readonly #readers = new Map<Known, Known[]>();
  readonly #elsewhere: readonly Known[];

  constructor(known: readonly Known[]) {
    for (const cell of known)
      this.#byCell.set(`${cell.figure.row},${cell.figure.column}`, cell);
    for (const cell of known)
      for (const area of cell.reads.areas)
        for (const read of this.within(area))
          this.#readers.set(read, [...(this.#readers.get(read) ?? []), cell]);
    this.#elsewhere = known.filter(({ reads }) => reads.otherSheets);
  }

  within({ row, column, rows, columns }: Area): readonly Known[] {
    const found: Known[] = [];
    for (let r = row; r < row + rows; r += 1)
      for (let c = column; c < column + columns; c += 1) {
        const cell = this.#byCell.get(`${r},${c}`);
        if (cell) found.push(cell);
      }
    return found;
  }

  /** Everything that may change when a figure does; other sheets of the book may follow anything. */
  followers(start: Known): ReadonlySet<Known> {
    const met = new Set<Known>();
    const waiting: Known[] = [start, ...this.#elsewhere];
    for (const cell of this.#elsewhere) if (cell !== start) met.add(cell);
    for (let cell = waiting.pop(); cell; cell = waiting.pop())
      for (const reader of this.#readers.get(cell) ?? [])
        if (!met.has(reader)) {
          met.add(reader);
          waiting.push(reader);
        }
    met.delete(start);
    return met;
  }
}
