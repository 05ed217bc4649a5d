import type { Area, Cell, CellStyle, Edge, Sheet } from "../../sheets/workbook";
import { addressLists, addressOf, rectangles } from "./areas";
import { arrayOf, bands } from "./bands";
import { areaOn, onSheet } from "./on-sheet";
import type { Step } from "./step";

/** The looks of a sheet, each said once for all the cells that have it. */
export function lookSteps(sheet: Sheet): readonly Step[] {
  const styled = sheet.cells.filter(isStyled);
  return [
    ...grouped(styled, plainLook).flatMap(([look, cells]) =>
      areaSteps(
        sheet,
        rectangles(cells, { sideways: true, stacks: true }),
        (format) => paint(format, look),
      ),
    ),
    ...edgeSteps(sheet, styled),
    ...formatSteps(sheet, styled),
  ];
}

type Styled = Cell & { readonly style: CellStyle };
type PlainLook = Omit<CellStyle, "edges" | "format">;

const isStyled = (cell: Cell): cell is Styled => cell.style !== undefined;

function plainLook({ style }: Styled): PlainLook | undefined {
  const { edges: _, format: _format, ...look } = style;
  return Object.keys(look).length === 0 ? undefined : look;
}

function paint(format: Excel.RangeFormat, look: PlainLook): void {
  if (look.bold !== undefined) format.font.bold = look.bold;
  if (look.italic !== undefined) format.font.italic = look.italic;
  if (look.color !== undefined) format.font.color = look.color;
  if (look.size !== undefined) format.font.size = look.size;
  if (look.font !== undefined) format.font.name = look.font;
  if (look.fill !== undefined) format.fill.color = look.fill;
  if (look.align !== undefined)
    format.horizontalAlignment = alignments[look.align];
  if (look.wrap !== undefined) format.wrapText = look.wrap;
  if (look.indent !== undefined) format.indentLevel = look.indent;
}

const alignments = { left: "Left", center: "Center", right: "Right" } as const;

/**
 * An edge belongs to each cell, and an area of several has edges inside too; so a line above or below is drawn along
 * strips one cell high, and one at a side cell by cell.
 */
function edgeSteps(sheet: Sheet, styled: readonly Styled[]): readonly Step[] {
  return sides.flatMap(([side, name, sideways]) =>
    grouped(styled, ({ style }) => {
      const edge = style.edges?.[side];
      return edge && { edge, color: style.edges?.color };
    }).flatMap(([{ edge, color }, cells]) =>
      areaSteps(
        sheet,
        rectangles(cells, { sideways, stacks: !sideways }),
        (format) => {
          const border = format.borders.getItem(name);
          border.style = edge === "double" ? "Double" : "Continuous";
          if (edge !== "double") border.weight = weights[edge];
          if (color !== undefined) border.color = color;
        },
      ),
    ),
  );
}

const weights: Readonly<Record<Exclude<Edge, "double">, "Thin" | "Medium">> = {
  thin: "Thin",
  medium: "Medium",
};

const sides = [
  ["top", "EdgeTop", true],
  ["bottom", "EdgeBottom", true],
  ["left", "EdgeLeft", false],
  ["right", "EdgeRight", false],
] as const;

/** Number formats cannot be set for several areas at once, so they go as arrays. */
const formatSteps = (
  sheet: Sheet,
  styled: readonly Styled[],
): readonly Step[] =>
  bands(
    styled
      .filter(({ style }) => style.format !== undefined)
      .map(({ row, column, style }) => ({
        row,
        column,
        value: style.format ?? null,
      })),
  ).map((band) => ({
    bytes: 600 + band.area.rows * band.area.columns * 9,
    run: (context) => {
      areaOn(context, sheet, band.area).numberFormat = arrayOf(
        band,
        ({ value }) => value,
      );
    },
  }));

const areaSteps = (
  sheet: Sheet,
  areas: readonly Area[],
  how: (format: Excel.RangeFormat) => void,
): readonly Step[] =>
  addressLists(areas.map(addressOf)).map((list) => ({
    bytes: 2000 + list.length,
    run: (context) => how(onSheet(context, sheet).getRanges(list).format),
  }));

/** Cells by what they have in common; those that have nothing of it are left out. */
function grouped<T>(
  cells: readonly Styled[],
  of: (cell: Styled) => T | undefined,
): readonly (readonly [T, readonly Styled[]])[] {
  const groups = new Map<string, [T, Styled[]]>();
  for (const cell of cells) {
    const common = of(cell);
    if (common === undefined) continue;
    const key = JSON.stringify(common);
    const known = groups.get(key);
    if (known) known[1].push(cell);
    else groups.set(key, [common, [cell]]);
  }
  return [...groups.values()];
}
