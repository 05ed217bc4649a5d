import type { PartOfCost } from "./costing";

/** One strip of the bar: where some of a bottle's money goes. */
export interface Strip {
  readonly name: string;
  readonly perBottle: number;
  /** Of the sum of all parts. */
  readonly share: number;
  /** Which of the bar's colours; the last one is for everything small together. */
  readonly color: number;
  readonly isSmall: boolean;
}

/** More colours than this cannot be told apart side by side. */
export const COLORS = 7;

/**
 * The parts of a bottle's cost, largest first. The largest few have a colour of their own, the small rest shares one.
 * Parts without a number, at zero or below are left out of the picture; they stay on the sheet.
 */
export function strips(parts: readonly PartOfCost[]): readonly Strip[] {
  const known = parts
    .flatMap(({ name, perBottle }) =>
      typeof perBottle === "number" && perBottle > 0
        ? [{ name, perBottle }]
        : [],
    )
    .sort((a, b) => b.perBottle - a.perBottle);
  const sum = known.reduce((total, part) => total + part.perBottle, 0);
  return known.map((part, i) => {
    const isSmall = known.length > COLORS && i >= COLORS - 1;
    return {
      ...part,
      share: part.perBottle / sum,
      color: isSmall ? COLORS - 1 : i,
      isSmall,
    };
  });
}

/** The strips as drawn: the small ones as one. */
export function drawnStrips(all: readonly Strip[]): readonly Strip[] {
  const small = all.filter((strip) => strip.isSmall);
  const total = (pick: (strip: Strip) => number): number =>
    small.reduce((sum, strip) => sum + pick(strip), 0);
  return small.length === 0
    ? all
    : [
        ...all.filter((strip) => !strip.isSmall),
        {
          name: `${small.length} smaller parts`,
          perBottle: total((s) => s.perBottle),
          share: total((s) => s.share),
          color: COLORS - 1,
          isSmall: true,
        },
      ];
}
