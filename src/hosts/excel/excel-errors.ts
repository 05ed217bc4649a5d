import { CannotAnswer, unusable } from "../../measures/cannot-answer";

/** A refusal of Excel's as a sentence for the person at the worksheet; a bug of ours stays what it is. */
export function asSentence(problem: unknown): unknown {
  if (problem instanceof CannotAnswer) return problem;
  const code = codeOf(problem);
  return code === undefined
    ? problem
    : unusable(`${sentences[code] ?? unknown} (Excel says ${code})`);
}

/** Excel's own short name of what went wrong, or undefined when the problem is none of Excel's. */
export function codeOf(problem: unknown): string | undefined {
  const code: unknown =
    typeof problem === "object" && problem !== null && "code" in problem
      ? problem.code
      : undefined;
  return typeof code === "string" ? code : undefined;
}

const unknown = "Excel could not do this";
const protectedSays =
  "Excel does not allow this change: the workbook or sheet is protected or open for reading only";
const gone =
  "Something this needs is no longer in the workbook; it may have been renamed or deleted just now";
const noAnswer =
  "Excel did not answer; wait until it is done with its other work and try again";
const tooMuch =
  "This is more than Excel takes at once; do it in smaller portions";
const tooOld =
  "This Excel is too old for this; update it, or use the workbench";

const sentences: Readonly<Record<string, string>> = {
  AccessDenied: protectedSays,
  Unauthenticated: "Excel asks you to sign in again",
  InvalidOperationInCellEditMode:
    "A cell is still being typed in; finish it with Enter or leave it with Esc, then try again",
  ItemNotFound: gone,
  InvalidReference: gone,
  InvalidObjectPath: gone,
  InactiveWorkbook: "This workbook is no longer the one in front",
  ItemAlreadyExists: "The workbook already has something of this name",
  RequestAborted: noAnswer,
  Timeout: noAnswer,
  ConnectionFailure: noAnswer,
  ServiceNotAvailable: noAnswer,
  HostRestartNeeded: "Excel wants to be started again",
  ActivityLimitReached: tooMuch,
  RequestPayloadSizeLimitExceeded: tooMuch,
  ResponsePayloadSizeLimitExceeded: tooMuch,
  OperationCellsExceedLimit: tooMuch,
  RangeExceedsLimit: tooMuch,
  FormulaLengthExceedsLimit: "A formula is longer than Excel allows",
  ApiNotFound: tooOld,
  ApiNotAvailable: tooOld,
  NotImplemented: tooOld,
  UnsupportedFeature: tooOld,
  UnsupportedOperation: tooOld,
  UnsupportedSheet: "This kind of sheet has no cells to write to",
  FilteredRangeConflict: "A filter is in the way; clear it and try again",
  MergedRangeConflict:
    "Merged cells are in the way; unmerge them and try again",
  InsertDeleteConflict:
    "Cells cannot be moved here without pushing others off the sheet",
  NonBlankCellOffSheet:
    "Cells cannot be moved here without pushing others off the sheet",
  PivotTableRangeConflict: "A pivot table is in the way",
  Conflict: "Someone else changed the same cells at the same time; try again",
  InvalidSelection: "Nothing is selected that this could be done to",
};
