import type { Block, Content } from "../model";

/** Gives a name in braces its place in another copy of the blocks. */
type Rename = (name: string) => string;

/**
 * A block of a costing sheet as one of several copies on a sheet: its names get a prefix, in its cells and in its formulas.
 * Names of `shared` cells stand once for all copies and stay as they are.
 */
export function renamed(
  block: Block,
  prefix: string,
  shared: ReadonlySet<string>,
): Block {
  const own: Rename = (name) =>
    shared.has(name.split(/[.:]/)[0] ?? "") ? name : `${prefix}${name}`;
  const content = (given: Content): Content => renamedContent(given, own);
  switch (block.kind) {
    case "title":
      return { ...block, content: content(block.content) };
    case "notes":
      return block;
    case "lines":
      return {
        ...block,
        lines: block.lines.map((line) => ({
          ...line,
          name: own(line.name),
          content:
            line.content === undefined ? undefined : content(line.content),
        })),
      };
    case "table":
      return {
        ...block,
        name: own(block.name),
        columns: block.columns.map((column) => ({
          ...column,
          content: content(column.content),
        })),
      };
    case "comparison":
      return {
        ...block,
        name: own(block.name),
        lines: block.lines.map((line) => ({
          ...line,
          content: content(line.content),
        })),
      };
    case "matrix":
      return {
        ...block,
        name: own(block.name),
        rows: block.rows.map((row) => ({
          ...row,
          contents: row.contents.map(content),
        })),
      };
  }
}

function renamedContent(content: Content, own: Rename): Content {
  if (typeof content !== "object") return content;
  return {
    formula: renamedText(content.formula, own),
    ...(content.portable === undefined
      ? {}
      : { portable: renamedText(content.portable, own) }),
  };
}

/** `{n}`, `{row.left}` and `{row_above.left}` mean the cell's own row; a span has a name at either end. */
const renamedText = (text: string, own: Rename): string =>
  text.replace(/\{([A-Za-z_][\w.:&]*)\}/g, (whole, name: string) =>
    name === "n" || /^row(_above)?\./.test(name)
      ? whole
      : `{${name.split("..").map(own).join("..")}}`,
  );
