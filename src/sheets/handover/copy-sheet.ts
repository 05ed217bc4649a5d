import { look } from "../looks";
import type { SheetDescription } from "../model";
import { place } from "../place";
import type {
  Cell,
  CellStyle,
  PrintSetup,
  Sheet,
  Validation,
} from "../workbook";
import { tryRule } from "./audiences";
import { type FigureFate, isBlank } from "./fates";
import { figuresOf } from "./figures";
import { Kept } from "./kept-blocks";
import { printed } from "./printed";
import { widthsOf, withRoom } from "./room";
import type { SheetToCopy } from "./sheet-to-copy";

/** A sheet of the copy, and which figure of the live sheet each of its figures is. */
export interface CopiedSheet {
  readonly sheet: Sheet;
  readonly figures: readonly {
    readonly row: number;
    readonly column: number;
    readonly of: FigureFate;
  }[];
}

/** Lays out what is kept of a sheet, close up, with its own formulas; `notes` stand under the title. */
export function copiedSheet(
  from: SheetToCopy,
  fates: readonly FigureFate[],
  notes: readonly string[],
  foot: string,
): CopiedSheet {
  const kept = new Kept(from, fates);
  const { description } = from.placed;
  const blocks = description.blocks.flatMap((block) => kept.block(block));
  const [title, ...rest] = blocks;
  const names = new Set(
    fates
      .filter(({ fate }) => fate !== "removed" && fate !== "blank")
      .map(({ figure }) => figure.name),
  );
  const copy: SheetDescription = {
    name: description.name,
    ...(description.tabColor === undefined
      ? {}
      : { tabColor: description.tabColor }),
    widths: [],
    frozenRows: description.frozenRows,
    charts: (description.charts ?? [])
      .filter(({ beside, series }) =>
        [beside, ...series.flatMap(({ values }) => namesIn(values))].every(
          (name) =>
            names.has(name) ||
            blocks.some((b) => "name" in b && b.name === name),
        ),
      )
      .map((chart) => ({ ...chart, rows: Math.min(chart.rows, MOST_ROWS) })),
    blocks: [
      ...(title ? [title] : []),
      { kind: "notes", lines: notes },
      ...rest,
    ],
  };
  const placed = place(copy, { portable: true });
  const figures = figuresOf(placed).flatMap(({ name, index, row, column }) => {
    const of = kept.original(name, index);
    // A row of several columns keeps its place where one of them is not shown.
    return of && of.fate !== "removed" && of.fate !== "blank"
      ? [{ row, column, of }]
      : [];
  });
  const cells = withValues(placed.sheet.cells, figures, from);
  const widths = widthsOf(cells);
  const print = description.print ?? USUAL_PRINT;
  return {
    figures,
    sheet: {
      ...placed.sheet,
      ...withRoom(cells, widths, placed.sheet.heights),
      validations: [...placed.sheet.validations, ...inColumns(figures, from)],
      widths,
      print: printed({ ...print, foot }, widths, {
        blocks: copy.blocks,
        tops: placed.tops,
      }),
    },
  };
}

const USUAL_PRINT: PrintSetup = {
  paper: "letter",
  landscape: true,
  fit: "one page wide",
  headings: { first: 0, rows: 1 },
};

/** A picture beside a block that lost rows must not lie over the next block. */
const MOST_ROWS = 10;

const namesIn = (text: string): readonly string[] =>
  [...text.matchAll(/\{([\w.]+)\}/g)].flatMap(([, name = ""]) =>
    name.split(".."),
  );

/** How a figure that no longer follows anything is marked. */
export const fixedLook: CellStyle = { italic: true, fill: "#e9e9e9" };

function withValues(
  cells: readonly Cell[],
  figures: CopiedSheet["figures"],
  { valueAt }: SheetToCopy,
): readonly Cell[] {
  const byCell = new Map(
    figures.map((one) => [`${one.row},${one.column}`, one.of]),
  );
  return cells.map((cell) => {
    const of = byCell.get(`${cell.row},${cell.column}`);
    if (!of) return typeof cell.value === "string" ? indented(cell) : cell;
    const value = valueAt(of.figure.row, of.figure.column);
    const style =
      of.fate === "input"
        ? look("input", cell.style?.format)
        : of.fate === "fixed" && of.figure.role !== "title" && !isBlank(value)
          ? { ...cell.style, ...fixedLook }
          : cell.style;
    const shown = {
      ...cell,
      ...(cell.formula === undefined ? {} : { value }),
      ...(style ? { style } : {}),
    };
    return typeof value === "string" ? indented(shown) : shown;
  });
}

/** Words away from the figure that ends at the left edge of their cell. */
const indented = (cell: Cell): Cell =>
  cell.column === 0 || cell.style?.align !== undefined
    ? cell
    : { ...cell, style: { ...cell.style, align: "left", indent: 1 } };

/** What may be typed into the cells of a table's column; a line carries its own rule. */
const inColumns = (
  figures: CopiedSheet["figures"],
  { kind }: SheetToCopy,
): readonly Validation[] =>
  figures.flatMap(({ row, column, of: { fate, figure } }) => {
    const tried = tryRule(kind, figure.name);
    return fate === "input" && figure.self && tried
      ? [
          {
            area: { row, column, rows: 1, columns: 1 },
            rule: tried.rule,
            strict: true,
            message: tried.says,
          },
        ]
      : [];
  });
