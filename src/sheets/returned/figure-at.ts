import type { Rows } from "../compare/match-rows";
import type { Block, Content, SheetDescription } from "../model";
import type { Cell, Stored } from "../workbook";
import { isSaid } from "./spoken";

/** A cell of a copy known again as a figure of the sheet it was made of. */
export interface NamedFigure {
  /** Its name without its row, as formulas call it: "channels.price". */
  readonly name: string;
  readonly label: string;
  /** What the row is about, from the row's first column: "Farm counter". */
  readonly of: string;
  /** Worked out at the farm. */
  readonly isCalculated: boolean;
  /** The unit beside it is not the farm's. */
  readonly otherUnit?: string;
}

/**
 * Finds a figure by the words around its cell: a copy carries no names, and its rows and columns are fewer. Undefined for
 * a cell that is no figure of the sheet.
 */
export function figureAt(
  { blocks }: Pick<SheetDescription, "blocks">,
  rows: Rows,
  row: number,
  column: number,
): NamedFigure | undefined {
  for (let top = row - 1; top >= 0; top -= 1) {
    const block = blockHeaded(blocks, rows.get(top));
    if (block) return inBlock(block, rows, { top, row, column });
  }
  return undefined;
}

type Titled = Exclude<Block, { readonly kind: "title" | "notes" }>;

/** A block's heading stands alone in its row. */
function blockHeaded(
  blocks: readonly Block[],
  row: ReadonlyMap<number, Cell> | undefined,
): Titled | undefined {
  const filled = [...(row?.values() ?? [])].filter(
    ({ value }) => (value ?? "") !== "",
  );
  const [only] = filled;
  if (filled.length !== 1 || only?.column !== 0) return undefined;
  return blocks.find(
    (block): block is Titled =>
      block.kind !== "title" &&
      block.kind !== "notes" &&
      block.title !== "" &&
      typeof only.value === "string" &&
      isSaid(block.title, only.value),
  );
}

function inBlock(
  block: Titled,
  rows: Rows,
  at: { readonly top: number; readonly row: number; readonly column: number },
): NamedFigure | undefined {
  const text = (row: number, column: number): string =>
    words(rows.get(row)?.get(column)?.value);
  const label = text(at.row, 0);
  const heading = text(at.top + 1, at.column);
  switch (block.kind) {
    case "lines": {
      const line = block.lines.find((one) => isSaid(one.label, label));
      if (!line || at.column !== 1) return undefined;
      const unit = text(at.row, 2);
      return {
        name: line.name,
        label: line.label,
        of: line.label,
        isCalculated: isFormula(line.content) && line.role !== "input",
        ...(isSaid(line.unit ?? "", unit) ? {} : { otherUnit: unit }),
      };
    }
    case "table": {
      const found = block.columns.find((one) => isSaid(one.label, heading));
      return found && at.row > at.top + 1
        ? {
            name: `${block.name}.${found.name}`,
            label: found.label,
            of: label,
            isCalculated: isFormula(found.content),
          }
        : undefined;
    }
    case "comparison": {
      const line = block.lines.find((one) => isSaid(one.label, label));
      return line && at.column > 0
        ? {
            name: `${block.name}.${line.name}`,
            label: line.label,
            of: line.label,
            isCalculated: isFormula(line.content),
          }
        : undefined;
    }
    case "matrix": {
      const line = block.rows.find((one) => isSaid(one.label, label));
      const found = block.columns.find((one) => isSaid(one.label, heading));
      return line && found
        ? {
            name: `${block.name}.${line.name}.${found.name}`,
            label: `${line.label}: ${found.label}`,
            of: found.label,
            isCalculated: line.contents.some(isFormula),
          }
        : undefined;
    }
  }
}

const words = (value: Stored | undefined): string =>
  typeof value === "string" ? value.trim() : "";

const isFormula = (content: Content | undefined): boolean =>
  typeof content === "object";
