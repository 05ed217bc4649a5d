import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
  type Share,
} from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";
import { contractLeft } from "./balance";

export interface ContractTerms {
  readonly weight: Kilograms;
  readonly start: DaySerial;
  readonly end: DaySerial;
  readonly minimumBrix: Brix | undefined;
}

export interface ShippedTote {
  readonly net: Kilograms;
  readonly brix: Brix;
}

/** How far a contract has come on a day. */
export interface ContractProgress {
  readonly shipped: Kilograms;
  readonly totes: number;
  /** Negative when more was shipped than agreed. */
  readonly left: Kilograms;
  readonly shareShipped: Share;
  /** Part of the contract's days that is gone, from 0 to 1. */
  readonly shareOfTime: Share;
  /** Until its last day; negative after it. */
  readonly daysLeft: number;
  /** Mean net weight of its totes, or of all totes while it has none. */
  readonly usualTote: Kilograms | undefined;
  readonly totesLeft: number | undefined;
  /** How far the last of these totes goes over if it is filled as usual: ask what the contract allows. */
  readonly overIfFull: Kilograms | undefined;
  /** Weighted by pounds; undefined before the first tote. */
  readonly meanBrix: Brix | undefined;
  /** Part of the agreed solids that is missing; 0 when the floor is met. */
  readonly brixShortfall: Share;
}

/** The progress of a contract; the weighted Brix of all its totes is what stands against its floor. */
export function contractProgress(
  terms: ContractTerms,
  totes: readonly ShippedTote[],
  day: DaySerial,
  usualElsewhere?: Kilograms,
): ContractProgress {
  const shipped = sum(totes.map(({ net }) => net));
  const left = contractLeft(
    terms.weight,
    totes.map(({ net }) => net),
  );
  const usualTote =
    totes.length === 0 ? usualElsewhere : as<Kilograms>(shipped / totes.length);
  const totesLeft =
    usualTote === undefined
      ? undefined
      : left <= 0
        ? 0
        : wholeUp(left / usualTote);
  const meanBrix =
    totes.length === 0
      ? undefined
      : as<Brix>(sum(totes.map(({ net, brix }) => net * brix)) / shipped);
  return {
    shipped,
    totes: totes.length,
    left,
    shareShipped: as<Share>(shipped / terms.weight),
    shareOfTime: as<Share>(
      Math.min(
        1,
        Math.max(0, (day - terms.start) / Math.max(1, terms.end - terms.start)),
      ),
    ),
    daysLeft: terms.end - day,
    usualTote,
    totesLeft,
    overIfFull:
      usualTote === undefined || totesLeft === undefined || left <= 0
        ? undefined
        : as<Kilograms>(totesLeft * usualTote - left),
    meanBrix,
    brixShortfall: brixShortfall(meanBrix, terms.minimumBrix),
  };
}

/** The part of the solids agreed on that a lighter syrup lacks, by which its price may be cut. Common practice, no source. */
export const brixShortfall = (
  brix: Brix | undefined,
  floor: Brix | undefined,
): Share =>
  as<Share>(
    brix === undefined || floor === undefined || brix >= floor
      ? 0
      : (floor - brix) / floor,
  );

const sum = (weights: readonly number[]): Kilograms =>
  as<Kilograms>(weights.reduce((total, weight) => total + weight, 0));
