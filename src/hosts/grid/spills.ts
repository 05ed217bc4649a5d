import type { IRange } from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "../../sheets/workbook";
import { rangeToArea } from "./ranges";

/** Where the answers of one sheet's formulas that fill more than their own cell lie, each from its formula's cell on. */
export function spillsOn(
  model: FormulaDataModel,
  book: string,
  sheet: string,
): readonly Area[] {
  const rows = model.getArrayFormulaRange()[book]?.[sheet] ?? {};
  return Object.values(rows)
    .flatMap((columns) => Object.values(columns ?? {}))
    .filter(isRange)
    .map(rangeToArea)
    .filter((area) => area.rows > 1 || area.columns > 1);
}

const isRange = (found: unknown): found is IRange =>
  typeof found === "object" && found !== null && "endRow" in found;
