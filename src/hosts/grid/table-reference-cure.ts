import {
  BaseFunction,
  type BaseReferenceObject,
} from "@univerjs/engine-formula";

let cured = false;

/**
 * INDEX and OFFSET into a table on another sheet answer from the calling cell's own sheet (engine 0.25.1): the part
 * they cut out forgets the sheet, which a table reference carries by id only.
 */
export function cureTableReferences(): void {
  if (cured) return;
  cured = true;
  const prototype = BaseFunction.prototype;

  const cutOut = prototype.createReferenceObject;
  prototype.createReferenceObject = function (
    this: BaseFunction,
    reference,
    range,
  ) {
    const part = cutOut.call(this, reference, range);
    // The engine then looks the sheet up by a name the part never had; it must keep what it has, as the whole reference does.
    if (reference.isTable() && part.isReferenceObject())
      (part as BaseReferenceObject).setForcedSheetId = () => undefined;
    return part;
  };
}
