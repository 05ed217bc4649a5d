import { unusable } from "../../measures/cannot-answer";
import type { Share } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";

/**
 * What must be drawn so that the need is left after a share of the drawn amount is lost: need ÷ (1 − share).
 * Refuses (#VALUE!) a share of 100 % or more.
 */
export function toDraw(need: number, lost: Share, name = "spoilage"): number {
  if (lost < 0 || lost >= 1)
    throw unusable(
      `${name}: ${lost * 100} % of what is drawn cannot be lost; it must be below 100 %`,
    );
  return need / (1 - lost);
}

export interface Pieces {
  readonly bottles: number;
  readonly perBottle: number;
  readonly spoilage: Share;
  /** Pieces that come together and are not split; 1 for loose pieces. */
  readonly carton: number;
}

/** Pieces of a part to draw for a run, in whole cartons. */
export const piecesToDraw = ({
  bottles,
  perBottle,
  spoilage,
  carton,
}: Pieces): number =>
  wholeUp(toDraw(bottles * perBottle, spoilage) / carton) * carton;
