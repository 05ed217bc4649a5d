import {
  type BookTrace,
  type ContainerKind,
  tracedPounds,
} from "../../book/totes-trace";
import { isoDate } from "../../measures/read-date";

/** The answer of `trace --json`. */
export interface TraceAnswer {
  readonly lot: string;
  readonly direction: "forward" | "back";
  readonly totalLb: number;
  readonly steps: readonly {
    readonly step: number;
    readonly date: string;
    readonly from: string;
    readonly to: string;
    readonly lb: number;
    readonly share: number;
  }[];
  readonly containers: readonly {
    readonly name: string;
    readonly kind: ContainerKind;
    readonly lb: number;
    /** Forward: of it, what is there now. Back: what was first there. */
    readonly restsLb: number;
    readonly product: string | null;
    readonly bottles: number | null;
    readonly cases: number | null;
  }[];
  readonly buyers: readonly {
    readonly buyer: string;
    readonly lb: number;
    readonly totes: readonly string[];
  }[];
  readonly unexplainedLb: number;
  /** How long the answer took to find. */
  readonly seconds: number;
}

export const traceAnswer = (
  found: BookTrace,
  seconds: number,
): TraceAnswer => ({
  lot: found.name,
  direction: found.direction,
  totalLb: tracedPounds(found.total),
  steps: found.steps.map(({ step, day, from, to, weight, share }) => ({
    step,
    date: isoDate(day),
    from,
    to,
    lb: tracedPounds(weight),
    share,
  })),
  containers: found.containers.map(
    ({ name, kind, weight, rests, run, cases }) => ({
      name,
      kind,
      lb: tracedPounds(weight),
      restsLb: tracedPounds(rests),
      product: run?.product ?? null,
      bottles: run?.goodBottles ?? null,
      cases: cases ?? null,
    }),
  ),
  buyers: found.buyers.map(({ buyer, weight, totes }) => ({
    buyer,
    lb: tracedPounds(weight),
    totes,
  })),
  unexplainedLb: tracedPounds(found.unexplained),
  seconds,
});
