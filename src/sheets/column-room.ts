import type { CellStyle, Stored } from "./workbook";

/** Widest a column is made, in characters: the first holds the labels. */
const mostRoom = (column: number): number => (column === 0 ? 40 : 20);

/** Letters a column needs to show what stands in a cell, within reason; undefined for what may run over into empty cells beside it. */
export function roomFor(
  column: number,
  shown: Stored | undefined,
  style: CellStyle | undefined,
  most = mostRoom(column),
): number | undefined {
  // A title, a heading and a remark run over into empty cells beside them; a heading of a column breaks.
  if (style?.size !== undefined || (style?.italic && !style.fill))
    return undefined;
  const length =
    typeof shown === "string"
      ? style?.wrap
        ? Math.max(...shown.split(/\s/).map((word) => word.length))
        : shown.length
      : typeof shown === "number"
        ? figureRoom(shown, style?.format ?? "")
        : 11;
  return Math.min(most, length + 2);
}

/** Letters of a figure as its format shows it, with one to spare should it grow; a day takes those of its format. */
function figureRoom(value: number, format: string): number {
  if (/y/.test(format)) return format.length;
  const decimals = /0\.([0#]+)/.exec(format)?.[1]?.length;
  const scaled = Math.abs(format.includes("%") ? value * 100 : value);
  const whole = scaled.toFixed(0).length;
  const groups = format.includes(",") ? Math.floor((whole - 1) / 3) : 0;
  const places =
    decimals === undefined
      ? format === ""
        ? String(Number(scaled.toPrecision(7))).length - whole
        : 0
      : decimals + 1;
  return Math.min(18, whole + groups + Math.max(0, places) + 2);
}

/** Lines a text breaks into where so many letters stand in one; bold letters are a little wider. */
export function linesOf(
  text: string,
  letters: number,
  { bold = false }: Pick<CellStyle, "bold"> = {},
): number {
  const most = bold ? letters * 0.92 : letters;
  let lines = 1;
  let used = 0;
  for (const { length } of text.split(/\s+/)) {
    const wanted = used === 0 ? length : used + 1 + length;
    if (wanted > most && used > 0) {
      lines += 1;
      used = length;
    } else used = wanted;
  }
  return lines;
}
