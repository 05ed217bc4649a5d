import { cellAddress } from "../../../sheets/address";
import type { Stored } from "../../../sheets/workbook";
import { formulaInFile } from "../formula-text";
import { columnNumber } from "../ranges";
import { textInFile } from "../worksheet-text";
import { escapeXml } from "../xml";
import { prefixed, prefixOf } from "./xml-insertion";

/** A cell to put where there is none, or a blank one. `style` is a number of the workbook's own list. */
export interface NewCell {
  readonly row: number;
  readonly column: number;
  readonly value: Stored;
  readonly formula?: string;
  readonly style?: string | undefined;
}

export interface FoundCell {
  readonly style: string | undefined;
  /** Neither a value nor a formula. */
  readonly blank: boolean;
}

/** Looks up what a worksheet's text holds at a place, undefined where it has no cell; the text is gone through once. */
export function cellFinder(
  xml: string,
): (row: number, column: number) => FoundCell | undefined {
  const prefix = prefixOf(xml);
  const rows = new Map(rowsOf(xml).map((row) => [row.number, row]));
  const cells = new Map<number, ReadonlyMap<number, FoundCell>>();
  return (row, column) => {
    const line = rows.get(row + 1);
    if (!line) return undefined;
    let held = cells.get(row);
    if (!held) {
      held = new Map(
        cellsOf(line.inside, prefix).map((cell) => [cell.column, cell]),
      );
      cells.set(row, held);
    }
    return held.get(column);
  };
}

/** The worksheet's text with cells put in, row by row and column by column in order; everything else keeps its characters. */
export function withCells(given: string, cells: readonly NewCell[]): string {
  const xml = withOpenData(given);
  const prefix = prefixOf(xml);
  const byRow = new Map<number, NewCell[]>();
  for (const cell of cells)
    byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
  const numbers = [...byRow.keys()].sort((a, b) => a - b);
  const rows = rowsOf(xml);
  const held = new Map(rows.map((row) => [row.number, row]));
  let text = "";
  let done = 0;
  let next = 0;
  for (const number of numbers) {
    const added = (byRow.get(number) ?? []).sort((a, b) => a.column - b.column);
    const there = held.get(number + 1);
    while ((rows[next]?.number ?? Infinity) <= number) next += 1;
    const at = there?.at ?? rows[next]?.at ?? endOfData(xml);
    text += xml.slice(done, at);
    text += there
      ? `${there.start}${merged(there.inside, added, prefix)}</${prefix}row>`
      : prefixed(
          `<row r="${number + 1}">${added.map(cellText).join("")}</row>`,
          prefix,
        );
    done = there?.end ?? at;
  }
  return text + xml.slice(done);
}

interface RowText {
  readonly number: number;
  readonly at: number;
  readonly end: number;
  readonly start: string;
  readonly inside: string;
}

function rowsOf(xml: string): readonly RowText[] {
  const p = prefixOf(xml);
  const found: RowText[] = [];
  const pattern = new RegExp(
    `<${p}row\\b([^>]*?)(?:/>|>([\\s\\S]*?)</${p}row>)`,
    "g",
  );
  let last = 0;
  for (const match of xml.matchAll(pattern)) {
    const [whole, attributes = "", inside = ""] = match;
    const given = /\br="(\d+)"/.exec(attributes)?.[1];
    const number = given ? Number(given) : last + 1;
    last = number;
    found.push({
      number,
      at: match.index,
      end: match.index + whole.length,
      start: `<${p}row${attributes.trimEnd()}>`,
      inside,
    });
  }
  return found;
}

/** A worksheet without rows may write its data as one empty element. */
function withOpenData(xml: string): string {
  const p = prefixOf(xml);
  return xml.replace(
    new RegExp(`<${p}sheetData\\s*/>`),
    `<${p}sheetData></${p}sheetData>`,
  );
}

function endOfData(xml: string): number {
  const p = prefixOf(xml);
  const at = xml.indexOf(`</${p}sheetData>`);
  if (at < 0) throw new Error("the sheet has no rows to add to");
  return at;
}

interface CellText extends FoundCell {
  readonly column: number;
  readonly text: string;
}

function cellsOf(inside: string, p: string): readonly CellText[] {
  const pattern = new RegExp(
    `<${p}c\\b([^>]*?)(?:/>|>([\\s\\S]*?)</${p}c>)`,
    "g",
  );
  let last = -1;
  return [...inside.matchAll(pattern)].map(
    ([text, attributes = "", held = ""]) => {
      const letters = /\br="([A-Z]+)\d+"/.exec(attributes)?.[1];
      last = letters ? columnNumber(letters) : last + 1;
      return {
        column: last,
        text,
        style: /\bs="(\d+)"/.exec(attributes)?.[1],
        blank: held.trim() === "",
      };
    },
  );
}

function merged(
  inside: string,
  added: readonly NewCell[],
  prefix: string,
): string {
  const held = cellsOf(inside, prefix);
  const all = [
    ...held.filter((cell) => !added.some((a) => a.column === cell.column)),
    ...added.map((cell) => ({
      column: cell.column,
      text: prefixed(
        cellText({
          ...cell,
          style:
            cell.style ?? held.find((h) => h.column === cell.column)?.style,
        }),
        prefix,
      ),
    })),
  ];
  return all
    .sort((a, b) => a.column - b.column)
    .map(({ text }) => text)
    .join("");
}

function cellText({ row, column, value, formula, style }: NewCell): string {
  const start = `<c r="${cellAddress(row, column)}"${style === undefined ? "" : ` s="${style}"`}`;
  const f =
    formula === undefined
      ? ""
      : `<f>${escapeXml(textInFile(formulaInFile(formula)))}</f>`;
  if (value === null) return f === "" ? `${start}/>` : `${start}>${f}</c>`;
  if (typeof value === "number") return `${start}>${f}<v>${value}</v></c>`;
  if (typeof value === "boolean")
    return `${start} t="b">${f}<v>${value ? 1 : 0}</v></c>`;
  if (typeof value === "object")
    return `${start} t="e">${f}<v>${escapeXml(value.error)}</v></c>`;
  const text = escapeXml(textInFile(value));
  return f === ""
    ? `${start} t="inlineStr"><is><t xml:space="preserve">${text}</t></is></c>`
    : `${start} t="str">${f}<v>${text}</v></c>`;
}
