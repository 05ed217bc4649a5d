import type { IRange } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Engine } from "./engine";
import type { Settling } from "./settling";

/**
 * When a spilled answer shrinks, the engine leaves formulas that read the vacated cells as they were; one full
 * calculation puts them right.
 */
export function guardSpills(engine: Engine, settling: Settling): void {
  const model = engine.univer.__getInjector().get(FormulaDataModel);
  let before = spills(model);
  settling.onApplied(() => {
    const now = spills(model);
    const shrunk = [...before].some(([anchor, extent]) => {
      const left = now.get(anchor);
      return !left || left.rows < extent.rows || left.columns < extent.columns;
    });
    before = now;
    if (shrunk) settling.calculateAll();
  });
}

interface Extent {
  readonly rows: number;
  readonly columns: number;
}

function spills(model: FormulaDataModel): ReadonlyMap<string, Extent> {
  const found = new Map<string, Extent>();
  for (const [book, sheets] of Object.entries(model.getArrayFormulaRange()))
    for (const [sheet, rows] of Object.entries(sheets ?? {}))
      for (const [row, columns] of Object.entries(rows ?? {}))
        for (const [column, range] of Object.entries(columns ?? {}))
          if (isRange(range))
            found.set([book, sheet, row, column].join("|"), {
              rows: range.endRow - range.startRow,
              columns: range.endColumn - range.startColumn,
            });
  return found;
}

const isRange = (found: unknown): found is IRange =>
  typeof found === "object" && found !== null && "endRow" in found;
