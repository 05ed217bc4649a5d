import type { Cell, Sheet, Stored, Workbook } from "../../sheets/workbook";
import { changedCells } from "../../sheets/changed-cells";
import type { CellPlace } from "../host";
import { circles, type Circle } from "./circular-cells";
import { GridSession } from "./grid-session";
import { startHeadless } from "./headless-engine";
import type { WorksheetFunction } from "./worksheet-function";

/** A cell that has no answer, and the sentence that says why. */
export interface RefusedCell extends CellPlace {
  readonly sentence: string;
}

export interface Calculated {
  readonly workbook: Workbook;
  readonly refusals: readonly RefusedCell[];
}

/**
 * Fills in the value of every formula cell and of the cells its answer spills into, and changes nothing else. A cell whose formula needs its own result holds
 * `#VALUE!`, and so does what reads it.
 */
export async function calculate(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
): Promise<Calculated> {
  const circular = new Circular(circles(workbook));
  const session = new GridSession(
    (refusals) => startHeadless(functions, refusals),
    circular.replaced(workbook),
  );
  try {
    await session.settled();
    const values = (sheet: string, { row, column }: Cell): Stored =>
      session.valueAt({ sheet, row, column });
    const { sheets, ...rest } = withValues(workbook, values);
    return {
      workbook: {
        ...rest,
        sheets: sheets.map((sheet) => session.book.withSpilled(sheet)),
      },
      refusals: [
        ...circular.cells,
        ...session.refusals().map(({ sheet, row, column, sentence }) => ({
          sheet,
          row,
          column,
          sentence,
        })),
      ],
    };
  } finally {
    session.dispose();
  }
}

const withValues = (
  workbook: Workbook,
  valueOf: (sheet: string, cell: Cell) => Stored,
): Workbook =>
  changedCells(workbook, (cell, sheet) =>
    cell.formula === undefined
      ? cell
      : { ...cell, value: valueOf(sheet.name, cell) },
  );

/** Circular formulas make the engine answer whatever it had; an error in their place is the honest value. */
class Circular {
  readonly cells: readonly RefusedCell[];
  readonly #places: ReadonlySet<string>;

  constructor(cells: readonly Circle[]) {
    this.cells = cells;
    this.#places = new Set(cells.map(placeKey));
  }

  replaced(workbook: Workbook): Workbook {
    if (this.cells.length === 0) return workbook;
    return changedCells(workbook, (cell, sheet) => this.#cell(sheet, cell));
  }

  #cell(sheet: Sheet, cell: Cell): Cell {
    if (!this.#places.has(placeKey({ ...cell, sheet: sheet.name })))
      return cell;
    const { formula: _, ...rest } = cell;
    return { ...rest, value: { error: "#VALUE!" } };
  }
}

const placeKey = ({ sheet, row, column }: CellPlace): string =>
  `${row},${column},${sheet}`;
