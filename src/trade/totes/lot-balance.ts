import { leftOf } from "../../measures/exact";
import { inOrderOfDays } from "../../measures/in-order-of-days";
import { as, type DaySerial, type Kilograms } from "../../measures/quantity";

/** A draw from a lot or barrel. */
export interface Draw {
  readonly day: DaySerial;
  /** What became of it, in the book's words. */
  readonly what: string;
  readonly weight: Kilograms;
}

export interface LotBalance<D extends Draw> {
  readonly received: Kilograms;
  readonly byUse: ReadonlyMap<string, Kilograms>;
  readonly out: Kilograms;
  /** By the book; negative when more was drawn than came in. */
  readonly left: Kilograms;
  /** Stock found by a count, less what was drawn after it; undefined where nothing was counted. */
  readonly counted: Kilograms | undefined;
  /** In, less out, less stock: what the book cannot explain. 0 where nothing was counted. */
  readonly unexplained: Kilograms;
  /** The first draw that takes more than the lot still held. */
  readonly overdraw:
    { readonly draw: D; readonly short: Kilograms } | undefined;
}

/** Draws over by less than this part of what came in are the noise of sums. */
const NOISE = 1e-9;

/** The mass balance of a lot in pounds in, pounds out and stock; draws count in order of their days. */
export function lotBalance<D extends Draw>(
  received: Kilograms,
  draws: readonly D[],
  count?: { readonly day: DaySerial; readonly weight: Kilograms },
): LotBalance<D> {
  const byUse = new Map<string, Kilograms>();
  for (const { what, weight } of draws)
    byUse.set(what, as<Kilograms>((byUse.get(what) ?? 0) + weight));
  const weights = draws.map(({ weight }) => weight);
  const left = as<Kilograms>(leftOf(received, weights));
  const counted =
    count &&
    as<Kilograms>(
      leftOf(
        count.weight,
        draws.filter(({ day }) => day > count.day).map(({ weight }) => weight),
      ),
    );
  return {
    received,
    byUse,
    out: as<Kilograms>(leftOf(received, [left])),
    left,
    counted,
    unexplained: as<Kilograms>(
      counted === undefined ? 0 : leftOf(left, [counted]),
    ),
    overdraw:
      left < -received * NOISE ? firstOverdraw(received, draws) : undefined,
  };
}

function firstOverdraw<D extends Draw>(
  received: Kilograms,
  draws: readonly D[],
): LotBalance<D>["overdraw"] {
  let held: number = received;
  for (const draw of inOrderOfDays(draws, ({ day }) => day)) {
    held -= draw.weight;
    if (held < -received * NOISE) return { draw, short: as<Kilograms>(-held) };
  }
  return undefined;
}
