import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { ERROR_TYPE_SET, type ErrorType } from "@univerjs/engine-formula";
import type { Stored } from "../../sheets/workbook";

/** Text that a grid or a person typing over it would take for a number, date or formula. */
const looksLikeMore = /^\s*[-+=.'$]?\s*\d|^[=']|^(true|false)$/i;

export function valueToGrid(
  value: Stored | undefined,
): Pick<ICellData, "v" | "t"> {
  if (value === null || value === undefined) return {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean")
    return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "object")
    return { v: value.error, t: CellValueType.STRING };
  return {
    v: value,
    t: looksLikeMore.test(value)
      ? CellValueType.FORCE_STRING
      : CellValueType.STRING,
  };
}

/** What a cell holds; null when it holds nothing. */
export function valueFromGrid(
  cell: Nullable<Pick<ICellData, "v" | "t" | "p">>,
): Stored {
  if (!cell) return null;
  const { v, t } = cell;
  if (v === null || v === undefined) return richText(cell);
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true || v === "1";
  if (typeof v === "string") {
    if (t !== CellValueType.FORCE_STRING && ERROR_TYPE_SET.has(v as ErrorType))
      return { error: v };
    if (t === CellValueType.NUMBER && v.trim() !== "" && Number.isFinite(+v))
      return Number(v);
  }
  return v;
}

/** Text of several lines or of several looks is kept as a small document, which ends in an empty paragraph. */
function richText(cell: Pick<ICellData, "p">): Stored {
  const text = cell.p?.body?.dataStream;
  if (text === undefined) return null;
  return text.replace(/\r?\n?$/, "").replace(/\r\n?/g, "\n");
}
