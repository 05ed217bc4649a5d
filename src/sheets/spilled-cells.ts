import type { Area, Cell, Stored } from "./workbook";

/**
 * The cells of a sheet with each answer shown in all the cells it fills: `areas` are where answers spill to, each from
 * its formula's own cell on. What was marked as spilled before and is so no more is left out, its look and note stay.
 */
export function withSpilled(
  cells: readonly Cell[],
  areas: readonly Area[],
  valueAt: (row: number, column: number) => Stored,
): readonly Cell[] {
  if (areas.length === 0 && !cells.some(isPartOfSpill)) return cells;
  const byPlace = new Map(
    cells.flatMap((cell) => {
      const own = isPartOfSpill(cell) ? withoutSpill(cell) : cell;
      return Object.keys(own).length > 2 ? [[placeKey(own), own] as const] : [];
    }),
  );
  for (const area of areas) {
    for (const place of placesIn(area)) {
      if (place.row === area.row && place.column === area.column) continue;
      const value = valueAt(place.row, place.column);
      if (value !== null)
        byPlace.set(placeKey(place), {
          ...place,
          ...byPlace.get(placeKey(place)),
          value,
          spilled: true,
        });
    }
    const anchor = byPlace.get(placeKey(area));
    if (anchor)
      byPlace.set(placeKey(area), {
        ...anchor,
        spills: { rows: area.rows, columns: area.columns },
      });
  }
  return [...byPlace.values()].sort(
    (a, b) => a.row - b.row || a.column - b.column,
  );
}

const isPartOfSpill = (cell: Cell): boolean =>
  cell.spilled === true || cell.spills !== undefined;

function withoutSpill(cell: Cell): Cell {
  const { spills: _, spilled, value, ...rest } = cell;
  return spilled || value === undefined ? rest : { ...rest, value };
}

const placesIn = (area: Area): readonly Pick<Cell, "row" | "column">[] =>
  Array.from({ length: area.rows * area.columns }, (_, i) => ({
    row: area.row + Math.floor(i / area.columns),
    column: area.column + (i % area.columns),
  }));

const placeKey = ({ row, column }: Pick<Cell, "row" | "column">): string =>
  `${row},${column}`;
