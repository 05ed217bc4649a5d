import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  WrapStrategy,
  type IBorderData,
  type IColorStyle,
  type IStyleData,
  type Nullable,
} from "@univerjs/core";
import type { CellStyle, Edge, Edges } from "../../sheets/workbook";

/** What a cell looks like that says nothing about its looks. */
export const plainStyle: IStyleData = { ff: "Arial", fs: 10 };

const padding = 2;
const indentStep = 9;

const aligned = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;

const edged: Readonly<Record<Edge, BorderStyleTypes>> = {
  thin: BorderStyleTypes.THIN,
  medium: BorderStyleTypes.MEDIUM,
  double: BorderStyleTypes.DOUBLE,
};

const sides = [
  ["top", "t"],
  ["bottom", "b"],
  ["left", "l"],
  ["right", "r"],
] as const;

export function styleToGrid(style: CellStyle): IStyleData {
  const out: IStyleData = {};
  // A font the machine lacks would fall back to a serif face.
  if (style.font !== undefined) out.ff = `${style.font}, Arial`;
  if (style.size !== undefined) out.fs = style.size;
  if (style.bold !== undefined) out.bl = flag(style.bold);
  if (style.italic !== undefined) out.it = flag(style.italic);
  if (style.color !== undefined) out.cl = { rgb: style.color };
  if (style.fill !== undefined) out.bg = { rgb: style.fill };
  if (style.format !== undefined) out.n = { pattern: style.format };
  if (style.align !== undefined) out.ht = aligned[style.align];
  if (style.wrap !== undefined)
    out.tb = style.wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW;
  if (style.indent !== undefined) {
    const space = padding + style.indent * indentStep;
    out.pd = style.align === "right" ? { r: space } : { l: space };
  }
  if (style.edges !== undefined) out.bd = edgesToGrid(style.edges);
  return out;
}

export function styleFromGrid(style: IStyleData): CellStyle | undefined {
  const indent = style.pd?.l ?? style.pd?.r;
  // A font of the model's always has a second one after it; the plain one stands alone.
  const plain = style.ff === plainStyle.ff;
  const found: CellStyle = {
    ...part("font", plain ? undefined : style.ff?.split(",")[0]?.trim()),
    ...part("size", plain && style.fs === plainStyle.fs ? undefined : style.fs),
    ...part("bold", unflag(style.bl)),
    ...part("italic", unflag(style.it)),
    ...part("color", hex(style.cl)),
    ...part("fill", hex(style.bg)),
    ...part("format", style.n?.pattern),
    ...part("align", alignOf(style.ht)),
    ...part(
      "wrap",
      style.tb === WrapStrategy.WRAP
        ? true
        : style.tb === WrapStrategy.OVERFLOW
          ? false
          : undefined,
    ),
    ...part(
      "indent",
      indent === undefined
        ? undefined
        : Math.max(0, Math.round((indent - padding) / indentStep)),
    ),
    ...part("edges", style.bd ? edgesFromGrid(style.bd) : undefined),
  };
  return Object.keys(found).length > 0 ? found : undefined;
}

const flag = (on: boolean): BooleanNumber =>
  on ? BooleanNumber.TRUE : BooleanNumber.FALSE;

const unflag = (on: BooleanNumber | undefined): boolean | undefined =>
  on === undefined ? undefined : on === BooleanNumber.TRUE;

const part = <K extends keyof CellStyle>(
  key: K,
  value: CellStyle[K] | undefined,
): Partial<Pick<CellStyle, K>> =>
  value === undefined ? {} : ({ [key]: value } as Pick<CellStyle, K>);

const alignOf = (given: Nullable<HorizontalAlign>): CellStyle["align"] =>
  (["left", "center", "right"] as const).find((a) => aligned[a] === given);

function edgesToGrid(edges: Edges): IBorderData {
  const cl: IColorStyle = edges.color === undefined ? {} : { rgb: edges.color };
  const out: IBorderData = {};
  for (const [side, short] of sides) {
    const edge = edges[side];
    if (edge !== undefined) out[short] = { s: edged[edge], cl };
  }
  return out;
}

function edgesFromGrid(border: IBorderData): Edges | undefined {
  const found: Record<string, string> = {};
  for (const [side, short] of sides) {
    const line = border[short];
    if (!line || line.s === BorderStyleTypes.NONE) continue;
    found[side] = edgeOf(line.s);
    const color = hex(line.cl);
    if (color !== undefined) found["color"] = color;
  }
  return Object.keys(found).length > 0 ? found : undefined;
}

/** The grid knows more line styles than the model; the nearest weight stands for them. */
function edgeOf(line: BorderStyleTypes): Edge {
  if (line === BorderStyleTypes.DOUBLE) return "double";
  return line >= BorderStyleTypes.MEDIUM ? "medium" : "thin";
}

/** `#rrggbb` from what the grid's colour pickers leave. */
function hex(color: Nullable<IColorStyle>): string | undefined {
  const given = color?.rgb?.trim().toLowerCase();
  if (!given) return undefined;
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/.exec(given);
  if (short)
    return `#${short
      .slice(1)
      .map((d) => d + d)
      .join("")}`;
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(given);
  if (parts)
    return `#${parts
      .slice(1, 4)
      .map((n) => Number(n).toString(16).padStart(2, "0"))
      .join("")}`;
  return /^#[0-9a-f]{6}/.test(given) ? given.slice(0, 7) : undefined;
}
