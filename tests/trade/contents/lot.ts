import type { LotSample } from "../../../src/trade/contents/lot";
import { mL } from "../../scenarios/in-pounds";

interface Given extends Partial<Omit<LotSample, "volumes">> {
  /** mL over the declared volume, bottle by bottle. */
  readonly errors: readonly number[];
  /** mL; 355 when nothing is said. */
  readonly size?: number;
  readonly short?: number;
}

/** A lot of 355 mL bottles, written as inspectors write one: by their errors. */
export function lotOf({
  errors,
  size = 355,
  short = 13,
  ...rest
}: Given): LotSample {
  return {
    volumes: errors.map((error) => mL(size + error)),
    declared: mL(size),
    lotSize: 200,
    allowedShort: mL(short),
    rule: "US",
    houseGoal: mL(size),
    ...rest,
  };
}

export const repeated = (times: number, error: number): readonly number[] =>
  Array.from({ length: times }, () => error);
