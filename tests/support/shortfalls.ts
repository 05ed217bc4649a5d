import {
  type AllowedShort,
  allowedShort,
  type ShortfallRule,
} from "../../src/trade/contents/allowed-short";
import { mL } from "../scenarios/in-pounds";

/** How far a pack may be short, as printed: over, up to and including, then per cent of the declared volume or mL. */
export interface ShortfallRow {
  readonly over: number;
  readonly upTo: number;
  readonly percent?: number;
  readonly amount?: number;
}

/** One test a row: just inside it, in the middle and at its upper limit. */
export function agreesWithShortfalls(
  rows: readonly ShortfallRow[],
  rule: ShortfallRule,
  figure: keyof Pick<AllowedShort, "allowed" | "unrounded">,
): void {
  for (const { over, upTo, percent = Number.NaN, amount } of rows)
    test(`a pack over ${over} and up to ${upTo} mL may be short by ${amount === undefined ? `${percent} %` : `${amount} mL`}`, () => {
      for (const size of [over + 0.5, (over + upTo) / 2, upTo]) {
        const ours = allowedShort(mL(size), rule)[figure] * 1000;
        expect(ours).toBeCloseTo(amount ?? (size * percent) / 100, 9);
      }
    });
}
