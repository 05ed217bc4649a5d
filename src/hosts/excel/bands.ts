import type { Area, Cell } from "../../sheets/workbook";

/** Rows that are written as one array, from the first to the last column any of them uses. */
export interface Band {
  readonly area: Area;
  readonly cells: ReadonlyMap<number, ReadonlyMap<number, Cell>>;
}

/** Bytes a range costs on the wire beside what is written to it, measured; blanks in an array cost less up to here. */
const rangeBytes = 450;
const blankBytes = 5;
/** A web request holds 5 MB; an array stays well below it. */
const mostBytes = 1_000_000;

/**
 * Cells as few arrays of few blanks: a row goes with those above it unless the blanks this makes cost more than a range
 * of its own.
 */
export function bands(cells: readonly Cell[]): readonly Band[] {
  const rows = new Map<number, Cell[]>();
  for (const cell of cells)
    rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell]);
  const found: { rows: Row[]; extent: Extent; bytes: number }[] = [];
  for (const [row, held] of [...rows].sort(([a], [b]) => a - b)) {
    const own = extentOf(row, held);
    const bytes = held.reduce((sum, cell) => sum + bytesOf(cell), 0);
    const last = found.at(-1);
    const joined = last && joinedExtent(last.extent, own);
    if (
      last &&
      joined &&
      last.bytes + bytes < mostBytes &&
      (size(joined) - size(last.extent) - size(own)) * blankBytes < rangeBytes
    ) {
      last.rows.push({ row, cells: held });
      last.extent = joined;
      last.bytes += bytes;
    } else found.push({ rows: [{ row, cells: held }], extent: own, bytes });
  }
  return found.map(({ rows: of, extent }) => ({
    area: {
      row: extent.top,
      column: extent.left,
      rows: extent.bottom - extent.top + 1,
      columns: extent.right - extent.left + 1,
    },
    cells: new Map(
      of.map(({ row, cells: held }) => [
        row,
        new Map(held.map((cell) => [cell.column, cell])),
      ]),
    ),
  }));
}

/** The band's array; what `of` gives for no cell is null, which leaves a cell as it is. */
export const arrayOf = <T>(
  { area, cells }: Band,
  of: (cell: Cell) => T | null,
): (T | null)[][] =>
  Array.from({ length: area.rows }, (_, r) =>
    Array.from({ length: area.columns }, (_unused, c) => {
      const cell = cells.get(area.row + r)?.get(area.column + c);
      return cell ? of(cell) : null;
    }),
  );

/** About how many bytes a cell's content takes. */
export const bytesOf = (cell: Cell): number =>
  3 + (cell.formula ?? String(cell.value ?? "")).length;

interface Row {
  readonly row: number;
  readonly cells: readonly Cell[];
}

interface Extent {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

function extentOf(row: number, cells: readonly Cell[]): Extent {
  const columns = cells.map(({ column }) => column);
  return {
    top: row,
    bottom: row,
    left: Math.min(...columns),
    right: Math.max(...columns),
  };
}

const joinedExtent = (a: Extent, b: Extent): Extent => ({
  top: a.top,
  bottom: b.bottom,
  left: Math.min(a.left, b.left),
  right: Math.max(a.right, b.right),
});

const size = (e: Extent): number =>
  (e.bottom - e.top + 1) * (e.right - e.left + 1);
