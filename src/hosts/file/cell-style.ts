import type { CellStyle as FileStyle } from "hucre/xlsx";
import type { CellStyle, Edge, Edges } from "../../sheets/workbook";
import { colorFromFile } from "./colors";

/** The font of a cell whose style names none, in files written here. */
export const baseFont = { name: "Calibri", size: 11 } as const;

/** What a file's styles are read against. */
export interface StyleContext {
  readonly theme: readonly string[];
  readonly font: { readonly name?: string; readonly size?: number };
}

type FileBorder = NonNullable<FileStyle["border"]>;
const sides = ["top", "bottom", "left", "right"] as const;

export function styleToFile(style: CellStyle): FileStyle {
  const {
    font,
    size,
    bold,
    italic,
    color,
    fill,
    format,
    align,
    wrap,
    indent,
    edges,
  } = style;
  const out: FileStyle = {};
  if (font !== undefined || size !== undefined || bold || italic || color)
    out.font = {
      name: font ?? baseFont.name,
      size: size ?? baseFont.size,
      ...(bold ? { bold } : {}),
      ...(italic ? { italic } : {}),
      ...(color ? { color: { rgb: bare(color) } } : {}),
    };
  if (fill)
    out.fill = {
      type: "pattern",
      pattern: "solid",
      fgColor: { rgb: bare(fill) },
    };
  if (edges) out.border = borderToFile(edges);
  if (align || wrap || indent)
    out.alignment = {
      ...(align ? { horizontal: align } : {}),
      ...(wrap ? { wrapText: true } : {}),
      ...(indent ? { indent } : {}),
    };
  if (format !== undefined) out.numFmt = format;
  return out;
}

/** The look of a cell as far as the model can say it; undefined when it says nothing. */
export function styleFromFile(
  style: FileStyle,
  { theme, font: base }: StyleContext,
): CellStyle | undefined {
  const { font, fill, border, alignment, numFmt } = style;
  // Theme colour 1 is "ordinary text", not a choice of black.
  const chosen =
    font?.color?.theme === 1 && !font.color.tint ? undefined : font?.color;
  const ground =
    fill?.type === "pattern" && fill.pattern !== "none"
      ? colorFromFile(fill.fgColor, theme)
      : undefined;
  const edges = border && edgesFromFile(border, theme);
  const align = (["left", "center", "right"] as const).find(
    (a) => a === alignment?.horizontal,
  );
  const color = colorFromFile(chosen, theme);
  const found: CellStyle = {
    ...(font?.name && font.name !== base.name ? { font: font.name } : {}),
    ...(font?.size && font.size !== base.size ? { size: font.size } : {}),
    ...(font?.bold ? { bold: true } : {}),
    ...(font?.italic ? { italic: true } : {}),
    ...(color ? { color } : {}),
    ...(ground ? { fill: ground } : {}),
    ...(numFmt ? { format: numFmt } : {}),
    ...(align ? { align } : {}),
    ...(alignment?.wrapText ? { wrap: true } : {}),
    ...(alignment?.indent ? { indent: alignment.indent } : {}),
    ...(edges ? { edges } : {}),
  };
  return Object.keys(found).length > 0 ? found : undefined;
}

/** What a file's style says that the model cannot, in words. */
export function looksLost({
  font,
  fill,
  border,
  alignment,
}: FileStyle): readonly string[] {
  const colors = new Set(
    sides.flatMap((side) =>
      border?.[side] ? [JSON.stringify(border[side].color)] : [],
    ),
  );
  return [
    ...(font?.underline ? ["underlining"] : []),
    ...(font?.strikethrough ? ["struck-out text"] : []),
    ...(font?.vertAlign ? ["raised or lowered text"] : []),
    ...(fill &&
    (fill.type === "gradient" || !["none", "solid"].includes(fill.pattern))
      ? ["patterned fills"]
      : []),
    ...(sides.some((side) => border?.[side] && !isEdge(border[side].style)) ||
    border?.diagonal
      ? ["other kinds of edges"]
      : []),
    ...(colors.size > 1 ? ["edges of several colours"] : []),
    ...(["fill", "justify", "centerContinuous", "distributed"].includes(
      alignment?.horizontal ?? "",
    )
      ? ["justified text"]
      : []),
    ...(alignment?.vertical && alignment.vertical !== "bottom"
      ? ["vertical alignment"]
      : []),
    ...(alignment?.textRotation ? ["turned text"] : []),
    ...(alignment?.shrinkToFit ? ["text shrunk to fit"] : []),
  ];
}

const bare = (color: string): string => color.replace("#", "").toUpperCase();

const isEdge = (line: string): line is Edge =>
  line === "thin" || line === "medium" || line === "double";

function borderToFile({ color, ...edges }: Edges): FileBorder {
  const out: FileBorder = {};
  for (const side of sides) {
    const style = edges[side];
    if (style)
      out[side] = { style, ...(color ? { color: { rgb: bare(color) } } : {}) };
  }
  return out;
}

function edgesFromFile(
  border: FileBorder,
  theme: readonly string[],
): Edges | undefined {
  const lines = sides.flatMap((side) => {
    const line = border[side];
    return line ? [{ side, line }] : [];
  });
  if (lines.length === 0) return undefined;
  const color = lines
    .map(({ line }) => colorFromFile(line.color, theme))
    .find((found) => found !== undefined);
  return {
    ...Object.fromEntries(
      lines.map(({ side, line }) => [side, nearest(line.style)]),
    ),
    ...(color ? { color } : {}),
  };
}

const nearest = (line: string): Edge => {
  if (isEdge(line)) return line;
  return line === "thick" || line.startsWith("medium") ? "medium" : "thin";
};
