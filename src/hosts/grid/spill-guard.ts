import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "../../sheets/workbook";
import type { Engine } from "./engine";
import type { Settling } from "./settling";
import { spillsOn } from "./spills";

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

function spills(model: FormulaDataModel): ReadonlyMap<string, Area> {
  return new Map(
    Object.entries(model.getArrayFormulaRange()).flatMap(([book, sheets]) =>
      Object.keys(sheets ?? {}).flatMap((sheet) =>
        spillsOn(model, book, sheet).map(
          (area) =>
            [[book, sheet, area.row, area.column].join("|"), area] as const,
        ),
      ),
    ),
  );
}
