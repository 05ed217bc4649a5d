import type { Self } from "./formula-names";
import { look, type Role } from "./looks";
import type { Block, Content, Line } from "./model";
import type { Area, Cell, Validation } from "./workbook";

/** A cell whose formula still names what it needs. */
export interface DraftCell extends Omit<Cell, "value" | "formula"> {
  readonly content: Content;
  readonly self?: Self;
}

/** A sheet being laid out: what has been placed so far, and where. */
export class Draft {
  readonly cells: DraftCell[] = [];
  readonly places = new Map<string, Area>();
  readonly validations: Validation[] = [];
  readonly heights: Record<number, number> = {};

  put(
    row: number,
    column: number,
    role: Role,
    content: Content | undefined,
    extra: {
      readonly format?: string | undefined;
      readonly align?: "right";
      readonly self?: Self;
    } = {},
  ): void {
    this.cells.push({
      row,
      column,
      content: content ?? "",
      style: {
        ...look(role, extra.format),
        ...(extra.align ? { align: extra.align } : {}),
      },
      ...(extra.self ? { self: extra.self } : {}),
    });
  }

  name(key: string, row: number, column: number, rows = 1, columns = 1): void {
    if (this.places.has(key)) throw new Error(`Two cells are named "${key}"`);
    this.places.set(key, { row, column, rows, columns });
  }

  heading(row: number, title: string, columns: number): void {
    for (let c = 0; c < columns; c += 1)
      this.put(row, c, "heading", c === 0 ? title : "");
  }
}

type Kind<K extends Block["kind"]> = Extract<Block, { readonly kind: K }>;

/** Places a block from `top` down and gives the first free row after it. */
export function placeBlock(draft: Draft, block: Block, top: number): number {
  switch (block.kind) {
    case "title":
      draft.put(top, 0, "title", block.content);
      draft.heights[top] = 26;
      return top + 1;
    case "notes":
      block.lines.forEach((line, i) => draft.put(top + i, 0, "aside", line));
      return top + block.lines.length;
    case "lines":
      draft.heading(top, block.title, 4);
      block.lines.forEach((line, i) => placeLine(draft, line, top + 1 + i));
      return top + 1 + block.lines.length;
    case "table":
      return placeTable(draft, block, top);
    case "comparison":
      return placeComparison(draft, block, top);
    case "matrix":
      return placeMatrix(draft, block, top);
  }
}

function placeLine(draft: Draft, line: Line, row: number): void {
  draft.put(row, 0, "label", line.label);
  draft.name(`${line.name}.label`, row, 0);
  draft.put(row, 1, line.role, line.content, { format: line.format });
  draft.name(line.name, row, 1);
  if (line.unit) draft.put(row, 2, "unit", line.unit);
  if (line.hint) draft.put(row, 3, "aside", line.hint);
  if (!line.rule) return;
  draft.validations.push({
    area: { row, column: 1, rows: 1, columns: 1 },
    rule: line.rule,
    strict: true,
    ...(line.ruleSays ? { message: line.ruleSays } : {}),
  });
}

function placeTable(draft: Draft, block: Kind<"table">, top: number): number {
  const first = top + 2;
  draft.heading(top, block.title, block.columns.length);
  draft.heights[top + 1] = 30;
  draft.name(block.name, first, 0, block.rows, block.columns.length);
  block.columns.forEach((column, c) => {
    draft.put(
      top + 1,
      c,
      "subheading",
      column.label,
      column.format === undefined ? {} : { align: "right" },
    );
    draft.name(`${block.name}.${column.name}`, first, c, block.rows);
    for (let i = 0; i < block.rows; i += 1) {
      draft.put(
        first + i,
        c,
        column.role ?? "calculated",
        column.contents?.[i] ?? column.content,
        {
          format: column.format,
          self: { table: block.name, index: i, across: false },
        },
      );
    }
  });
  const after = first + block.rows;
  if (!block.total) return after;
  draft.put(after, 0, "result", block.total.label);
  for (const total of block.total.columns) {
    const c = block.columns.findIndex((column) => column.name === total);
    draft.put(
      after,
      c,
      "result",
      { formula: `=SUM({${block.name}.${total}})` },
      { format: block.columns[c]?.format },
    );
    draft.name(`${block.name}.${total}.total`, after, c);
  }
  return after + 1;
}

function placeComparison(
  draft: Draft,
  block: Kind<"comparison">,
  top: number,
): number {
  draft.heading(top, block.title, Math.max(4, block.things + 2));
  block.lines.forEach((line, i) => {
    const row = top + 1 + i;
    draft.put(row, 0, "label", line.label);
    draft.name(`${block.name}.${line.name}`, row, 1, 1, block.things);
    for (let thing = 0; thing < block.things; thing += 1) {
      draft.put(
        row,
        1 + thing,
        line.role ?? "calculated",
        line.contents?.[thing] ?? line.content,
        {
          format: line.format,
          self: { table: block.name, index: thing, across: true },
        },
      );
    }
    if (line.unit) draft.put(row, 1 + block.things, "unit", line.unit);
  });
  return top + 1 + block.lines.length;
}

function placeMatrix(draft: Draft, block: Kind<"matrix">, top: number): number {
  const first = top + 2;
  draft.heading(top, block.title, block.columns.length + 1);
  draft.heights[top + 1] = 30;
  draft.put(top + 1, 0, "subheading", "");
  block.columns.forEach((column, c) =>
    draft.put(top + 1, c + 1, "subheading", column.label, { align: "right" }),
  );
  block.rows.forEach((line, i) => {
    const row = first + i;
    draft.put(row, 0, line.role === "result" ? "result" : "label", line.label);
    draft.name(`${block.name}.${line.name}.label`, row, 0);
    block.columns.forEach((column, c) => {
      const content = line.contents[c];
      if (content === undefined) return;
      draft.put(row, c + 1, line.role ?? "calculated", content, {
        format: line.format,
      });
      draft.name(`${block.name}.${line.name}.${column.name}`, row, c + 1);
    });
  });
  draft.name(block.name, first, 0, block.rows.length, block.columns.length + 1);
  return first + block.rows.length;
}
