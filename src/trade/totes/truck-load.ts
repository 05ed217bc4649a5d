import { leftOf } from "../../measures/exact";
import { as, type Kilograms } from "../../measures/quantity";
import { wholeDown } from "../../measures/whole-down";
import { refuseAbovePlate } from "./net";

/** What a truck takes, as its carrier says it. How a load comes to lie on the axles is not worked out here. */
export interface TruckLimits {
  /** Most weight of cargo. */
  readonly payload: Kilograms;
  /** Most cargo before an axle group is full, if the carrier gives one. */
  readonly axles: Kilograms | undefined;
  /** Places for totes on the floor. */
  readonly spots: number | undefined;
}

export const truckBinds = [
  "the truck's limit",
  "the axle limit",
  "the floor",
] as const;
export type TruckBind = (typeof truckBinds)[number];

/** How many totes of one gross weight fit. */
export interface TruckFit {
  readonly byWeight: number;
  readonly byAxles: number | undefined;
  readonly byFloor: number | undefined;
  readonly totes: number;
  /** What stops the next tote; several where they stop it together. */
  readonly binds: readonly TruckBind[];
}

/** Totes of this gross weight that fit by weight, by axles and by floor; the fewest counts. */
export function truckFit(gross: Kilograms, limits: TruckLimits): TruckFit {
  const of = (limit: Kilograms): number => wholeDown(limit / gross);
  const byWeight = of(limits.payload);
  const byAxles = limits.axles === undefined ? undefined : of(limits.axles);
  const all = [byWeight, byAxles, limits.spots];
  const totes = all.reduce<number>(
    (least, one) => Math.min(least, one ?? least),
    byWeight,
  );
  return {
    byWeight,
    byAxles,
    byFloor: limits.spots,
    totes,
    binds: truckBinds.filter((_, i) => all[i] === totes),
  };
}

/** A tote that is filled and weighed. */
export interface FilledTote {
  readonly name: string;
  readonly gross: Kilograms;
  /** The largest gross weight marked on it; undefined where nobody has written it down. */
  readonly plateLimit: Kilograms | undefined;
}

/** Chosen totes on a truck. */
export interface TruckLoad {
  readonly totes: number;
  readonly gross: Kilograms;
  /** Until the tighter of truck and axles is full; below 0 the load is over by so much. */
  readonly left: Kilograms;
  /** Below 0 so many totes have no place. */
  readonly spotsLeft: number | undefined;
  /** What the load is over. */
  readonly over: readonly TruckBind[];
  /** Those that ride when the totes are taken in the order given and the first that does not fit ends the loading. */
  readonly riding: readonly string[];
  /** Totes whose marked maximum is not known: it is asked about, never assumed. */
  readonly plateUnknown: readonly string[];
}

/** Adds up chosen totes against a truck. Has no answer (#N/A) with a tote above its own marked maximum: it may not move. */
export function truckLoad(
  totes: readonly FilledTote[],
  limits: TruckLimits,
): TruckLoad {
  for (const { name, gross, plateLimit } of totes)
    refuseAbovePlate(gross, plateLimit, name);
  const leftUnder = (limit: Kilograms, of: readonly FilledTote[]): number =>
    leftOf(
      limit,
      of.map(({ gross }) => gross),
    );
  const overBy = (of: readonly FilledTote[]): readonly TruckBind[] => [
    ...(leftUnder(limits.payload, of) < 0 ? [truckBinds[0]] : []),
    ...(limits.axles !== undefined && leftUnder(limits.axles, of) < 0
      ? [truckBinds[1]]
      : []),
    ...(limits.spots !== undefined && of.length > limits.spots
      ? [truckBinds[2]]
      : []),
  ];
  const firstOver = totes.findIndex(
    (_, i) => overBy(totes.slice(0, i + 1)).length > 0,
  );
  const tighter = as<Kilograms>(
    Math.min(limits.payload, limits.axles ?? limits.payload),
  );
  const left = leftUnder(tighter, totes);
  return {
    totes: totes.length,
    gross: as<Kilograms>(leftOf(tighter, [left])),
    left: as<Kilograms>(left),
    spotsLeft:
      limits.spots === undefined ? undefined : limits.spots - totes.length,
    over: overBy(totes),
    riding: totes
      .slice(0, firstOver < 0 ? totes.length : firstOver)
      .map(({ name }) => name),
    plateUnknown: totes
      .filter(({ plateLimit }) => plateLimit === undefined)
      .map(({ name }) => name),
  };
}
