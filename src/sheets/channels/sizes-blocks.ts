import type { Block } from "../model";
import { column } from "./orders-block";

const sizeName = (i: number): string => `size_${i + 1}`;

/** Order sizes, over the columns they stand for. */
export const sizesBlock = (sizes: readonly number[]): Block => ({
  kind: "table",
  name: "sizes",
  title: "Order sizes to look at",
  rows: 1,
  columns: [
    { name: "what", label: "Order sizes", content: "Bottles in the order" },
    ...sizes.map((bottles, i) => ({
      name: sizeName(i),
      label: `Size ${i + 1}`,
      role: "input" as const,
      format: "#,##0",
      content: bottles,
    })),
  ],
});

export const smallOrdersBlock = (
  rows: number,
  sizes: readonly number[],
): Block => ({
  kind: "table",
  name: "small",
  title: "What orders of those sizes leave",
  rows,
  columns: [
    {
      name: "channel",
      label: "Channel",
      content: { formula: "=INDEX({orders.channel},{n})" },
    },
    ...sizes.map((_, i) =>
      column(
        `left_${i + 1}`,
        `Size ${i + 1}`,
        `IF(INDEX({orders.sold},{n})<>"yes","",IF(N({sizes.${sizeName(i)}})>=1,INDEX({orders.fixed},{n})+{sizes.${sizeName(i)}}*INDEX({orders.each},{n}),"needs bottles"))`,
        "#,##0.00;-#,##0.00",
      ),
    ),
  ],
});

/** One channel from one bottle to twelve, for the picture. */
export const pictureBlock: Block = {
  kind: "table",
  name: "picture",
  title: "The channel in the picture, order by order",
  rows: 12,
  columns: [
    {
      name: "bottles",
      label: "Bottles",
      format: "0",
      content: { formula: "={n}" },
    },
    {
      name: "left",
      label: "Left",
      format: "#,##0.00;-#,##0.00",
      content: {
        formula:
          "=IFERROR(INDEX({orders.fixed},MATCH({drawn},{orders.channel},0))+{row.bottles}*INDEX({orders.each},MATCH({drawn},{orders.channel},0)),NA())",
      },
    },
  ],
};
