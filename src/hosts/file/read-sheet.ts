import type { Sheet as FileSheet } from "hucre/xlsx";
import type { Cell, Sheet, Table, Validation } from "../../sheets/workbook";
import type { StyleContext } from "./cell-style";
import { chartsFromFile } from "./chart-from-file";
import { colorFromFile } from "./colors";
import { partXml, relationsOf, type Parts } from "./package-parts";
import { printFromFile, type PrintNames } from "./print-setup";
import { areaOf } from "./ranges";
import { readCells } from "./read-cells";
import { tableFromPart } from "./table-part";
import { validationsFromFile } from "./validation-rules";
import { textFromFile } from "./worksheet-text";
import {
  allNamed,
  childNamed,
  childrenNamed,
  flagOf,
  type XmlElement,
} from "./xml";

/** One worksheet of a package being read. */
export interface SheetSource {
  readonly parts: Parts;
  /** The worksheet's part. */
  readonly part: string;
  readonly name: string;
  readonly hidden: boolean;
  readonly library: FileSheet;
  readonly style: StyleContext;
  readonly dateShift: number;
  readonly printNames: PrintNames;
}

/** A sheet as the model holds it, and what of its contents the model does not carry, in words without the sheet's name. */
export interface SheetRead {
  readonly sheet: Sheet;
  readonly lost: readonly string[];
  /** Parts that the sheet's charts hold whole. */
  readonly carriedParts: readonly string[];
}

export function readSheet(source: SheetSource): SheetRead {
  const { parts, part, name, hidden, library, style } = source;
  const worksheet = partXml(parts, part);
  const read = readCells(worksheet, source);
  const tables = related(parts, part, "table").map(tableFromPart);
  const rules = allNamed(worksheet, "dataValidation").map((element) => ({
    element,
    validations: validationsFromFile(element),
  }));
  const charts = chartsFromFile(parts, part);
  const print = printFromFile(worksheet, source.printNames);
  const tab = library.view?.tabColor;
  const tabColor = colorFromFile(tab, style.theme);
  return {
    sheet: {
      name,
      cells: withNotes(read.cells, notesOf(parts, part)),
      tables: tables.flatMap(({ table }): readonly Table[] =>
        table ? [table] : [],
      ),
      validations: rules.flatMap(
        ({ validations }): readonly Validation[] => validations ?? [],
      ),
      merges: allNamed(worksheet, "mergeCell").map(({ attributes }) =>
        areaOf(attributes["ref"] ?? ""),
      ),
      widths: widthsOf(worksheet, lastColumn(read.cells)),
      heights: heightsOf(worksheet),
      frozen: frozenOf(worksheet),
      ...(hidden ? { hidden } : {}),
      ...(tabColor ? { tabColor } : {}),
      ...(charts.length > 0
        ? { charts: charts.map(({ chart }) => chart) }
        : {}),
      ...(print ? { print } : {}),
    },
    carriedParts: charts.map(({ part: held }) => held),
    lost: [
      ...read.lost,
      ...tables.flatMap(({ lost }) => lost),
      ...rules.flatMap(({ element, validations }) =>
        validations
          ? []
          : [`the rule for what may be typed in ${ruleArea(element)}`],
      ),
    ],
  };
}

const related = (
  parts: Parts,
  part: string,
  kind: string,
): readonly XmlElement[] =>
  relationsOf(parts, part)
    .filter((relation) => relation.kind === kind && parts[relation.target])
    .map(({ target }) => partXml(parts, target));

const ruleArea = (rule: XmlElement): string =>
  rule.attributes["sqref"] ?? childNamed(rule, "sqref")?.text ?? "some cells";

/** Text of notes by cell reference. */
function notesOf(parts: Parts, part: string): ReadonlyMap<string, string> {
  return new Map(
    related(parts, part, "comments")
      .flatMap((comments) => allNamed(comments, "comment"))
      .map((comment) => [
        comment.attributes["ref"] ?? "",
        allNamed(comment, "t")
          .map(({ text }) => textFromFile(text))
          .join(""),
      ]),
  );
}

function withNotes(
  cells: readonly Cell[],
  notes: ReadonlyMap<string, string>,
): readonly Cell[] {
  if (notes.size === 0) return cells;
  const byPlace = new Map(
    cells.map((cell) => [`${cell.row},${cell.column}`, cell]),
  );
  for (const [reference, note] of notes) {
    const { row, column } = areaOf(reference);
    const key = `${row},${column}`;
    byPlace.set(key, { ...(byPlace.get(key) ?? { row, column }), note });
  }
  return [...byPlace.values()].sort(
    (a, b) => a.row - b.row || a.column - b.column,
  );
}

const lastColumn = (cells: readonly Cell[]): number =>
  cells.reduce((last, { column }) => Math.max(last, column), -1);

/** A width given for the endless rest of the columns counts only as far as the sheet is used. */
function widthsOf(worksheet: XmlElement, used: number): Sheet["widths"] {
  const widths: Record<number, number> = {};
  for (const { attributes } of childrenNamed(
    childNamed(worksheet, "cols"),
    "col",
  )) {
    const width = Number(attributes["width"]);
    const first = Number(attributes["min"]) - 1;
    const last = Number(attributes["max"]) - 1;
    if (!(width > 0)) continue;
    const until = last - first < 64 ? last : Math.min(last, used);
    for (let column = first; column <= until; column += 1)
      widths[column] = width;
  }
  return widths;
}

function heightsOf(worksheet: XmlElement): Sheet["heights"] {
  const heights: Record<number, number> = {};
  let row = -1;
  for (const line of childrenNamed(childNamed(worksheet, "sheetData"), "row")) {
    row = line.attributes["r"] ? Number(line.attributes["r"]) - 1 : row + 1;
    const height = Number(line.attributes["ht"]);
    if (flagOf(line, "customHeight") && height > 0) heights[row] = height;
  }
  return heights;
}

function frozenOf(worksheet: XmlElement): Sheet["frozen"] {
  const [pane] = allNamed(
    childNamed(worksheet, "sheetViews") ?? worksheet,
    "pane",
  );
  const frozen = /^frozen/.test(pane?.attributes["state"] ?? "");
  return {
    rows: frozen ? Number(pane?.attributes["ySplit"] ?? 0) : 0,
    columns: frozen ? Number(pane?.attributes["xSplit"] ?? 0) : 0,
  };
}
