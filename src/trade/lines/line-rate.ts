import {
  as,
  type PerHour,
  type Seconds,
  type Share,
} from "../../measures/quantity";
import { unusable } from "../../measures/cannot-answer";

/** The filling heads of a line: each fills one bottle a cycle, for the share of the hour that the line really runs. */
export interface Heads {
  readonly count: number;
  readonly fill: Seconds;
  readonly handling: Seconds;
  readonly running: Share;
}

/** Another station on the line (capping, labelling, casing) and what it can do in an hour. */
export interface Station {
  readonly name: string;
  readonly rate: PerHour;
}

/** Bottles per hour of a line: the heads, or the slowest other station if that is less. */
export const lineRate = (
  heads: Heads,
  stations: readonly Station[] = [],
): PerHour =>
  as<PerHour>(Math.min(headsRate(heads), ...stations.map((s) => s.rate)));

/** What holds the line back: "heads", or the name of the slowest station (the first of equals). */
export function lineLimit(
  heads: Heads,
  stations: readonly Station[] = [],
): string {
  const rate = lineRate(heads, stations);
  return headsRate(heads) <= rate
    ? "heads"
    : (stations.find((s) => s.rate === rate)?.name ?? "heads");
}

/** Bottles per hour at the heads alone. Refuses (#VALUE!) a cycle of no time. */
export function headsRate({ count, fill, handling, running }: Heads): PerHour {
  const cycle = fill + handling;
  if (cycle <= 0)
    throw unusable("fill and handling: together they must take some time");
  return as<PerHour>((count / cycle) * 3600 * running);
}
