import { unusable } from "../measures/cannot-answer";
import type { Kilograms } from "../measures/quantity";
import type { Part } from "../trade/blending/blend";
import { inPounds } from "./by-weight";
import { figure } from "./wording";

interface Column<F extends number> {
  /** As the argument is called. */
  readonly name: string;
  /** What one of them is called. */
  readonly one: string;
  readonly figures: readonly (F | undefined)[];
  /** One figure in words: "66.5 °Bx". */
  readonly written: (figure: F) => string;
}

/** Weights with the figures beside them; a row with only one of the two is refused by its number, a blank one passed over. */
export function partsOf<F extends number>(
  weights: readonly (Kilograms | undefined)[],
  column: Column<F>,
): readonly Part<F>[] {
  const { name, one, figures, written } = column;
  if (weights.length !== figures.length)
    throw unusable(
      `weights and ${name}: ${weights.length} weights do not stand beside ${figures.length} ${name}; give both row by row, both with a heading or both without`,
    );
  const parts: Part<F>[] = [];
  for (const [i, weight] of weights.entries()) {
    const value = figures[i];
    if (weight === undefined && value === undefined) continue;
    if (weight === undefined)
      throw unusable(
        `row ${i + 1}: needs its weight beside ${written(value as F)}; type 0 if none of it goes in`,
      );
    if (value === undefined)
      throw unusable(
        `row ${i + 1}: needs its ${one} beside ${pounds(weight)}; enter it or take the row out`,
      );
    parts.push({ weight, figure: value });
  }
  return parts;
}

/** Lots written out one by one; beyond these the sentence would be longer than the sheet is wide. */
const WRITTEN_OUT = 4;

/** "500 lb × 66.9 + 1,200 lb × 65.9 + 3 more lots"; a lot that has a name is named before its pounds. */
export function sumInWords<F extends number>(
  parts: readonly (Part<F> & { readonly name?: string })[],
  written: (figure: F) => string,
): string {
  const first = parts
    .slice(0, WRITTEN_OUT)
    .map(
      ({ name, weight, figure: of }) =>
        `${name === undefined ? "" : `"${name}" `}${pounds(weight)} × ${written(of)}`,
    );
  const more = parts.length - first.length;
  return [
    ...first,
    ...(more > 0 ? [`${more} more lot${more > 1 ? "s" : ""}`] : []),
  ].join(" + ");
}

export const totalOf = (parts: readonly Part<number>[]): string =>
  pounds(parts.reduce((sum, { weight }) => sum + weight, 0) as Kilograms);

export const pounds = (weight: Kilograms): string =>
  `${figure(inPounds(weight), 8)} lb`;
