import { inOrderOfDays } from "../../measures/in-order-of-days";
import { as, type DaySerial, type Kilograms } from "../../measures/quantity";

/** A lot, or an emptied barrel, that a run may draw from. */
export interface SuitableLot {
  readonly lot: string;
  readonly received: DaySerial;
  readonly left: Kilograms;
}

export interface LotDraw {
  readonly lot: string;
  readonly weight: Kilograms;
  /** What is left of the lot after the run. */
  readonly after: Kilograms;
}

export interface LotDraws {
  readonly draws: readonly LotDraw[];
  /** What the lots together cannot give. */
  readonly short: Kilograms;
}

/** Draws a run's syrup from the oldest lots first; lots of one day go in the order of their rows. */
export function drawOldestFirst(
  need: Kilograms,
  lots: readonly SuitableLot[],
): LotDraws {
  const draws: LotDraw[] = [];
  let open = need as number;
  for (const { lot, left } of inOrderOfDays(lots, (l) => l.received)) {
    if (open <= 0) break;
    if (left <= 0) continue;
    const weight = Math.min(open, left);
    draws.push({
      lot,
      weight: as<Kilograms>(weight),
      after: as<Kilograms>(left - weight),
    });
    open -= weight;
  }
  // The last bits of a sum of pounds must not make a full draw short.
  return { draws, short: as<Kilograms>(open > need * 1e-12 ? open : 0) };
}
