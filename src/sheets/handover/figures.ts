import type { Self } from "../formula-names";
import type { Role } from "../looks";
import type { Block, Content } from "../model";
import type { PlacedSheet } from "../place";
import type { Validation } from "../workbook";

/** One cell of a sheet that holds a figure or a text of the book: everything but labels, units and hints. */
export interface Figure {
  /** Its name without its row: "bulk_price", "cost.full.replacement", "channels.price". */
  readonly name: string;
  /** Unlike any other's of the sheet: the name and, in a table or comparison, its row or thing. */
  readonly id: string;
  /** Which block of the description holds it. */
  readonly block: number;
  readonly index: number;
  readonly row: number;
  readonly column: number;
  readonly role: Role;
  readonly content: Content | undefined;
  readonly self: Self | undefined;
  /** The words beside or above it. */
  readonly label: string;
  readonly rule?: Validation["rule"];
}

export const figureId = (name: string, index: number): string =>
  `${name}#${index}`;

/** Every figure of a placed sheet, block by block, with its place. */
export const figuresOf = ({
  description,
  tops,
}: Pick<PlacedSheet, "description" | "tops">): readonly Figure[] =>
  description.blocks.flatMap((block, i) => inBlock(block, i, tops[i] ?? 0));

function inBlock(block: Block, at: number, top: number): readonly Figure[] {
  const figure = (
    name: string,
    index: number,
    row: number,
    column: number,
    more: Pick<Figure, "content" | "label"> &
      Partial<Pick<Figure, "role" | "self">>,
  ): Figure => ({
    name,
    id: figureId(name, index),
    block: at,
    index,
    row,
    column,
    role: "calculated",
    self: undefined,
    ...more,
  });
  switch (block.kind) {
    case "title":
      return [
        figure("title", at, top, 0, {
          content: block.content,
          label: "Title",
          role: "title",
        }),
      ];
    case "notes":
      return [];
    case "lines":
      return block.lines.map(({ name, content, label, role, rule }, i) => ({
        ...figure(name, 0, top + 1 + i, 1, { content, label, role }),
        ...(rule ? { rule } : {}),
      }));
    case "table":
      return [
        ...block.columns.flatMap((column, c) =>
          Array.from({ length: block.rows }, (_, i) =>
            figure(`${block.name}.${column.name}`, i, top + 2 + i, c, {
              content: column.contents?.[i] ?? column.content,
              label: column.label,
              role: column.role ?? "calculated",
              self: { table: block.name, index: i, across: false },
            }),
          ),
        ),
        ...(block.total?.columns ?? []).map((name) => {
          const c = block.columns.findIndex((one) => one.name === name);
          return figure(
            `${block.name}.${name}.total`,
            0,
            top + 2 + block.rows,
            c,
            {
              content: { formula: `=SUM({${block.name}.${name}})` },
              label: `${block.total?.label ?? ""}: ${block.columns[c]?.label ?? ""}`,
              role: "result",
            },
          );
        }),
      ];
    case "comparison":
      return block.lines.flatMap((line, l) =>
        Array.from({ length: block.things }, (_, i) =>
          figure(`${block.name}.${line.name}`, i, top + 1 + l, 1 + i, {
            content: line.contents?.[i] ?? line.content,
            label: line.label,
            role: line.role ?? "calculated",
            self: { table: block.name, index: i, across: true },
          }),
        ),
      );
    case "matrix":
      return block.rows.flatMap((line, r) =>
        block.columns.flatMap((column, c) => {
          const content = line.contents[c];
          return content === undefined
            ? []
            : [
                figure(
                  `${block.name}.${line.name}.${column.name}`,
                  0,
                  top + 2 + r,
                  1 + c,
                  {
                    content,
                    label: `${line.label}: ${column.label}`,
                    role: line.role ?? "calculated",
                  },
                ),
              ];
        }),
      );
  }
}
