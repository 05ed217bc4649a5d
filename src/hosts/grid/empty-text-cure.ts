import { BaseReferenceObject } from "@univerjs/engine-formula";

let cured = false;

/**
 * A formula that has just come to an empty text is read as blank by the formulas after it, and later, once the text is
 * in its cell, as the text (engine 0.25.1): the engine tells the two apart by whether the cell holds a formula, which a
 * result just worked out does not say. Blank counts as zero where an empty text is refused.
 */
export function cureEmptyTexts(): void {
  if (cured) return;
  cured = true;
  const prototype = BaseReferenceObject.prototype;

  const read = prototype.getCellData;
  prototype.getCellData = function (this: BaseReferenceObject, row, column) {
    const cell = read.call(this, row, column);
    return cell?.v === "" &&
      cell === this.getCurrentRuntimeSheetData()?.getValue(row, column)
      ? { ...cell, f: "=" }
      : cell;
  };
}
