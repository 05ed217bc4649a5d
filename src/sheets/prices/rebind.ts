import type { Block, Column, Content } from "../model";

/** What a name in braces stands for in another sheet: formula text, in braces where it is again a name. */
export type Names = Readonly<Record<string, string>>;

/** A formula text with some of its names in braces standing for something else; the others stay as they are. */
export const rebound = (text: string, names: Names): string =>
  text.replace(
    /\{([A-Za-z_][\w.:&]*)\}/g,
    (whole, name: string) => names[name] ?? whole,
  );

/** The formula of a costing sheet's line or column, without its "=", with its names rebound. One text, two sheets. */
export function formulaOf(block: Block, name: string, names: Names): string {
  const content = contentOf(block, name);
  if (typeof content !== "object")
    throw new Error(`"${name}" of a costing holds no formula`);
  return rebound(content.formula.slice(1), names);
}

/** A column of a costing sheet's table as it is, with its names rebound. */
export function columnOf(
  block: Block,
  name: string,
  names: Names = {},
): Column {
  if (block.kind !== "table") throw new Error(`"${name}" is no column`);
  const column = block.columns.find((c) => c.name === name);
  if (!column) throw new Error(`A costing has no column "${name}"`);
  return {
    ...column,
    content: { formula: `=${formulaOf(block, name, names)}` },
  };
}

function contentOf(block: Block, name: string): Content | undefined {
  switch (block.kind) {
    case "table":
      return block.columns.find((column) => column.name === name)?.content;
    case "lines":
    case "comparison":
      return (
        block.lines as readonly {
          readonly name: string;
          readonly content: Content | undefined;
        }[]
      ).find((line) => line.name === name)?.content;
    default:
      throw new Error(`A ${block.kind} block has no formula "${name}"`);
  }
}
