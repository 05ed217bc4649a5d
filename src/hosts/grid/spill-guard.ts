import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "../../sheets/workbook";
import type { Engine } from "./engine";
import type { Settling } from "./settling";
import { spillsOn } from "./spills";

/**
 * When a spilled answer shrinks, the engine leaves formulas that read the vacated cells as they were; one full
 * calculation puts them right. The answers of a workbook that has given way to another do not shrink.
 */
export function guardSpills(
  engine: Engine,
  settling: Settling,
  bookId: () => string,
): void {
  const model = engine.univer.__getInjector().get(FormulaDataModel);
  let book = bookId();
  let before = spills(model, book);
  settling.onApplied(() => {
    if (book !== bookId()) before = new Map();
    book = bookId();
    const now = spills(model, book);
    const shrunk = [...before].some(([anchor, extent]) => {
      const left = now.get(anchor);
      return !left || left.rows < extent.rows || left.columns < extent.columns;
    });
    before = now;
    if (shrunk) settling.calculateAll();
  });
}

const spills = (
  model: FormulaDataModel,
  book: string,
): ReadonlyMap<string, Area> =>
  new Map(
    Object.keys(model.getArrayFormulaRange()[book] ?? {}).flatMap((sheet) =>
      spillsOn(model, book, sheet).map(
        (area) => [`${sheet}|${area.row}|${area.column}`, area] as const,
      ),
    ),
  );
