import type { Cell, Sheet } from "../workbook";

/** A sheet's cells by row and column. */
export type Rows = ReadonlyMap<number, ReadonlyMap<number, Cell>>;

export function rowsOf(sheet: Sheet): Rows {
  const rows = new Map<number, Map<number, Cell>>();
  for (const cell of sheet.cells) {
    if (cell.formula === undefined && (cell.value ?? null) === null) continue;
    const row = rows.get(cell.row) ?? new Map<number, Cell>();
    row.set(cell.column, cell);
    rows.set(cell.row, row);
  }
  return rows;
}

export interface RowMatch {
  /** Rows of the sent sheet and where they stand in the returned one. */
  readonly pairs: ReadonlyMap<number, number>;
  readonly gone: readonly number[];
  readonly added: readonly number[];
}

/**
 * Finds each sent row in the returned sheet by what its labels say, in order: rows put in or taken out move the others
 * without losing them. A row whose labels were rewritten still matches when it stands between two matched neighbours
 * with nothing else in the gap.
 */
export function matchRows(sent: Rows, returned: Rows): RowMatch {
  const before = [...sent.keys()].sort((a, b) => a - b);
  const after = [...returned.keys()].sort((a, b) => a - b);
  const keysBefore = before.map((row) => keyOf(sent.get(row)));
  const keysAfter = after.map((row) => keyOf(returned.get(row)));
  const pairs = new Map<number, number>();
  for (const [i, j] of commonOrder(keysBefore, keysAfter))
    pairs.set(before[i] as number, after[j] as number);
  pairAcrossGaps(before, after, pairs);
  const taken = new Set(pairs.values());
  return {
    pairs,
    gone: before.filter((row) => !pairs.has(row)),
    added: after.filter((row) => !taken.has(row)),
  };
}

/** What stays the same when figures change: the row's own words. A row of figures alone is known by where they stand. */
function keyOf(row: ReadonlyMap<number, Cell> | undefined): string {
  const cells = [...(row ?? [])].sort(([a], [b]) => a - b);
  const words = cells.filter(
    ([, { formula, value }]) =>
      formula === undefined && typeof value === "string" && !isFigure(value),
  );
  return words.length > 0
    ? words.map(([column, { value }]) => `${column}:${String(value)}`).join("|")
    : cells.map(([column]) => `#${column}`).join("|");
}

/** A number that came back as text is still a figure. */
export const isFigure = (text: string): boolean =>
  /^[\s$€£CA()+−-]*\d[\d\s.,' ]*\s*(%|lb|mL|kg|USD|CAD)?\s*\)?$/.test(text);

/** The longest common subsequence of two lists, as pairs of places; equal ends are taken off first. */
function commonOrder(
  a: readonly string[],
  b: readonly string[],
): readonly (readonly [number, number])[] {
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start])
    start += 1;
  let end = 0;
  while (
    end < a.length - start &&
    end < b.length - start &&
    a[a.length - 1 - end] === b[b.length - 1 - end]
  )
    end += 1;
  const middleA = a.slice(start, a.length - end);
  const middleB = b.slice(start, b.length - end);
  return [
    ...Array.from({ length: start }, (_, i) => [i, i] as const),
    ...middle(middleA, middleB).map(
      ([i, j]) => [i + start, j + start] as const,
    ),
    ...Array.from(
      { length: end },
      (_, i) => [a.length - end + i, b.length - end + i] as const,
    ),
  ];
}

function middle(
  a: readonly string[],
  b: readonly string[],
): readonly (readonly [number, number])[] {
  const width = b.length + 1;
  const longest = new Uint32Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i -= 1)
    for (let j = b.length - 1; j >= 0; j -= 1)
      longest[i * width + j] =
        a[i] === b[j]
          ? (longest[(i + 1) * width + j + 1] as number) + 1
          : Math.max(
              longest[(i + 1) * width + j] as number,
              longest[i * width + j + 1] as number,
            );
  const pairs: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < a.length && j < b.length) {
    if (a[i] === b[j]) {
      pairs.push([i, j]);
      i += 1;
      j += 1;
    } else if (
      (longest[(i + 1) * width + j] as number) >=
      (longest[i * width + j + 1] as number)
    )
      i += 1;
    else j += 1;
  }
  return pairs;
}

function pairAcrossGaps(
  before: readonly number[],
  after: readonly number[],
  pairs: Map<number, number>,
): void {
  const taken = new Set(pairs.values());
  const ends = [
    ...before.flatMap((row) => {
      const there = pairs.get(row);
      return there === undefined ? [] : [[row, there] as const];
    }),
    [Infinity, Infinity] as const,
  ];
  let [from, fromAfter] = [-1, -1];
  for (const [to, toAfter] of ends) {
    const lost = before.filter((r) => r > from && r < to && !pairs.has(r));
    const found = after.filter(
      (r) => r > fromAfter && r < toAfter && !taken.has(r),
    );
    if (lost.length > 0 && lost.length === found.length)
      lost.forEach((row, i) => pairs.set(row, found[i] as number));
    [from, fromAfter] = [to, toAfter];
  }
}
