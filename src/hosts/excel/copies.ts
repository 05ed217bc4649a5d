import type { Area, Cell } from "../../sheets/workbook";
import { movedDown } from "../formula-references";
import { rectangles } from "./areas";

/** Formulas that only repeat the row above them, as one copy downward; the rest is written out. */
export interface Copies {
  readonly written: readonly Cell[];
  /** From the row just above, in the order they have to be made. */
  readonly areas: readonly Area[];
}

/** Bytes a copy costs on the wire; shorter repetitions are written out. */
const copyBytes = 1000;

export function withCopies(cells: readonly Cell[]): Copies {
  const byPlace = new Map(
    cells.map((cell) => [placeKey(cell.row, cell.column), cell]),
  );
  const repeats = cells.filter((cell) => {
    const above = byPlace.get(placeKey(cell.row - 1, cell.column))?.formula;
    return (
      above !== undefined &&
      !wholeRows.test(above) &&
      cell.formula === movedDown(above, 1)
    );
  });
  const areas = rectangles(repeats, { sideways: true, stacks: true }).filter(
    (area) => bytesIn(area, byPlace) > copyBytes,
  );
  const copied = new Set(areas.flatMap(placesIn));
  return {
    written: cells.filter(
      ({ row, column }) => !copied.has(placeKey(row, column)),
    ),
    areas,
  };
}

/** "3:3" moves when it is copied, though it is not written like a cell. */
const wholeRows = /(^|[^$\w])\$?\d+:\$?\d+/;

const bytesIn = (area: Area, cells: ReadonlyMap<string, Cell>): number =>
  placesIn(area).reduce(
    (sum, key) => sum + (cells.get(key)?.formula?.length ?? 0),
    0,
  );

const placesIn = (area: Area): readonly string[] =>
  Array.from({ length: area.rows * area.columns }, (_, i) =>
    placeKey(
      area.row + Math.floor(i / area.columns),
      area.column + (i % area.columns),
    ),
  );

const placeKey = (row: number, column: number): string => `${row},${column}`;
