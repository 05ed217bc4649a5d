import type { Sheet as FileSheet } from "hucre/xlsx";
import { cellAddress } from "../../sheets/address";
import type { Area, Cell, CellStyle, Stored } from "../../sheets/workbook";
import { looksLost, styleFromFile, type StyleContext } from "./cell-style";
import { callsAddIn, formulaFromFile } from "./formula-text";
import { areaOf, areaReference } from "./ranges";
import { moveFormula } from "./shared-formula";
import { textFromFile } from "./worksheet-text";
import { allNamed, childNamed, childrenNamed, type XmlElement } from "./xml";

/** What the cells of one sheet are read against. */
export interface CellContext {
  /** The same sheet as the reading library gives it: shared texts and resolved styles. */
  readonly library: FileSheet;
  readonly style: StyleContext;
  /** Days to add to a date, in a file that counts its days from 1904. */
  readonly dateShift: number;
}

export interface CellsRead {
  readonly cells: readonly Cell[];
  /** What some cells have that the model does not carry, in words. */
  readonly lost: readonly string[];
}

interface Place {
  readonly row: number;
  readonly column: number;
}

/** What earlier cells of the sheet said that later ones rest on, and what was lost on the way. */
interface Progress {
  readonly shared: Map<string, Place & { readonly formula: string }>;
  readonly spills: Area[];
  readonly lost: Set<string>;
}

/** The cells of a worksheet part, row by row; those without value, formula and look are left out. */
export function readCells(
  worksheet: XmlElement,
  context: CellContext,
): CellsRead {
  const progress: Progress = {
    shared: new Map(),
    spills: [],
    lost: new Set(),
  };
  const cells: Cell[] = [];
  let row = -1;
  for (const line of childrenNamed(childNamed(worksheet, "sheetData"), "row")) {
    row = line.attributes["r"] ? Number(line.attributes["r"]) - 1 : row + 1;
    let column = -1;
    for (const element of childrenNamed(line, "c")) {
      const reference = element.attributes["r"];
      column = reference ? areaOf(reference).column : column + 1;
      const at = { row, column };
      const formula = formulaOf(element, at, progress);
      const value = storedValue(element, at, context);
      const style = lookOf(at, context, progress.lost);
      const spill = progress.spills.find((area) => covers(area, at));
      if (value !== null || formula !== undefined || style)
        cells.push({
          ...at,
          ...(value === null ? {} : { value }),
          ...(formula === undefined ? {} : { formula }),
          ...(style ? { style } : {}),
          ...(spill && (formula !== undefined || value !== null)
            ? spillMark(spill, at)
            : {}),
        });
    }
  }
  return { cells, lost: [...progress.lost] };
}

function lookOf(
  { row, column }: Place,
  { library, style: styles }: CellContext,
  lost: Set<string>,
): CellStyle | undefined {
  const known = library.cells?.get(`${row},${column}`);
  if (known?.richText?.some(({ font }) => font && Object.keys(font).length > 0))
    lost.add("text with several looks in one cell");
  if (!known?.style) return undefined;
  for (const look of looksLost(known.style)) lost.add(look);
  return styleFromFile(known.style, styles);
}

const covers = (area: Area, { row, column }: Place): boolean =>
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

const spillMark = (
  { row, column, rows, columns }: Area,
  at: Place,
): Pick<Cell, "spills" | "spilled"> =>
  at.row === row && at.column === column
    ? { spills: { rows, columns } }
    : { spilled: true };

function formulaOf(
  cell: XmlElement,
  at: Place,
  { shared, spills, lost }: Progress,
): string | undefined {
  const f = childNamed(cell, "f");
  if (!f) return undefined;
  const { t: kind, si = "", ref } = f.attributes;
  const text = textFromFile(f.text);
  if (kind === "dataTable") {
    lost.add("a what-if table");
    return undefined;
  }
  if (kind === "shared" && text === "") {
    const first = shared.get(si);
    return (
      first &&
      formulaFromFile(
        moveFormula(
          first.formula,
          at.row - first.row,
          at.column - first.column,
        ),
      )
    );
  }
  if (text === "") return undefined;
  if (kind === "shared") shared.set(si, { formula: text, ...at });
  if (kind === "array") {
    const area = areaOf(ref ?? cellAddress(at.row, at.column));
    const single = area.rows === 1 && area.columns === 1;
    if (!single) spills.push(area);
    // Excel marks a formula that spills with metadata, and so every call of an add-in's function.
    if (!cell.attributes["cm"] && !(single && callsAddIn(text)))
      lost.add(`the array formula in ${areaReference(area)}`);
  }
  return formulaFromFile(text);
}

function storedValue(
  cell: XmlElement,
  { row, column }: Place,
  { library, dateShift }: CellContext,
): Stored {
  const dated = library.rows[row]?.[column] instanceof Date;
  return valueOf(cell, library.rows[row]?.[column], dated ? dateShift : 0);
}

function valueOf(cell: XmlElement, known: unknown, dateShift: number): Stored {
  const text = childNamed(cell, "v")?.text;
  switch (cell.attributes["t"]) {
    case "s":
      return typeof known === "string" ? known : null;
    case "inlineStr":
      return inlineText(childNamed(cell, "is"));
    case "str":
      return text === undefined ? null : textFromFile(text);
    case "b":
      return text === undefined ? null : text === "1" || text === "true";
    case "e":
      return text === undefined ? null : { error: text };
    case "d":
      return text === undefined ? null : dayNumber(text);
    default:
      return text === undefined ||
        text.trim() === "" ||
        !Number.isFinite(Number(text))
        ? null
        : Number(text) + dateShift;
  }
}

/** All text but the phonetic hints some languages add. */
const inlineText = (is: XmlElement | undefined): string =>
  (is?.children ?? [])
    .filter(({ name }) => name === "t" || name === "r")
    .flatMap((part) => (part.name === "t" ? [part] : allNamed(part, "t")))
    .map(({ text }) => textFromFile(text))
    .join("");

/** The worksheet's number of an ISO 8601 date, counted from 1899-12-30. */
function dayNumber(text: string): number | null {
  const time = Date.parse(
    /T.*(Z|[+-]\d\d:?\d\d)$/.test(text) || !text.includes("T")
      ? text
      : `${text}Z`,
  );
  return Number.isNaN(time) ? null : time / 86_400_000 + 25_569;
}
