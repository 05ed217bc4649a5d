import type { Block } from "../model";
import type { PrintSetup, Sheet } from "../workbook";

/** Letters of ordinary size across a letter page on its side. */
const PAGE_LETTERS = 130;
/** Narrower than so much of its size nobody reads a page. */
const SMALLEST = 0.5;
/** Pages that stand side by side are printed at about so much of their size. */
const SIDE_BY_SIDE = 0.75;
/** A table as long as this may break over pages. */
const LONG = 12;

/** The print settings of a copied sheet, all of which is for its reader: on several pages side by side where one would be too small, a long table's headings on every page. */
export function printed(
  { across: _across, upTo: _upTo, ...print }: PrintSetup,
  widths: Sheet["widths"],
  {
    blocks,
    tops,
  }: { readonly blocks: readonly Block[]; readonly tops: readonly number[] },
): PrintSetup {
  const across = print.fit === "one page" ? 1 : pagesAcross(widths);
  const long = blocks
    .flatMap((block, i) =>
      block.kind === "table" && block.rows >= LONG
        ? [{ rows: block.rows, headings: (tops[i] ?? 0) + 1 }]
        : [],
    )
    .sort((a, b) => b.rows - a.rows)[0];
  return {
    ...print,
    ...(across > 1 ? { across, landscape: true } : {}),
    ...(long ? { headings: { first: long.headings, rows: 1 } } : {}),
  };
}

/** How many pages side by side show these columns large enough to read; each begins with the first column. */
export function pagesAcross(widths: Sheet["widths"]): number {
  const [first = 0, ...others] = Object.values(widths);
  const rest = others.reduce((sum, width) => sum + width, 0);
  return first + rest <= PAGE_LETTERS / SMALLEST
    ? 1
    : Math.ceil(rest / (PAGE_LETTERS / SIDE_BY_SIDE - first));
}
