import { as, type Money, type Share } from "../../measures/quantity";

/** A season's bill and what it is shared out by. */
export interface Overhead {
  readonly item: string;
  readonly perYear: Money;
  readonly toBulk: Share;
  readonly driver: string;
}

/** What a season has done, by which its bills are shared out. */
export interface SeasonDone {
  readonly runs: number;
  readonly lots: number;
  readonly gallons: number;
  /** Hours with set-up and clean-down, by line. */
  readonly hours: readonly { readonly line: string; readonly hours: number }[];
}

/** A closed season that stands in for one that has not done as much yet. */
export interface SeasonBefore extends SeasonDone {
  readonly season: number;
}

/** What a season has done so far, and what this run adds to compare with it. */
export interface Drivers extends SeasonDone {
  readonly before?: SeasonBefore;
  readonly own: {
    readonly gallons: number;
    readonly hours: number;
    readonly line: string;
  };
}

/** A run's part of a bill. */
export interface OverheadPart {
  readonly item: string;
  /** Undefined for a driver we do not know or one that sums to nothing. */
  readonly cost: Money | undefined;
  /** The season before, where the bill is shared over what that one did. */
  readonly estimateFrom?: number;
}

/** A run's part of a bill by its driver; undefined for a driver we do not know or one that sums to nothing. */
export const overheadShare = (
  overhead: Overhead,
  season: Drivers,
): Money | undefined => overheadPart(overhead, season).cost;

/**
 * The same, and whether it is an estimate: a bill is a whole year's, so it is shared over what the season before did for
 * as long as that is more of the bill's own driver than this season has done.
 */
export function overheadPart(
  { item, perYear, toBulk, driver }: Overhead,
  { own, before, ...season }: Drivers,
): OverheadPart {
  const word = driver.trim().toLowerCase();
  const soFar = whole(word, season);
  const then = before === undefined ? 0 : whole(word, before);
  const shared = Math.max(soFar, then);
  if (shared <= 0) return { item, cost: undefined };
  const cost = as<Money>((perYear * (1 - toBulk) * part(word, own)) / shared);
  return before === undefined || then <= soFar
    ? { item, cost }
    : { item, cost, estimateFrom: before.season };
}

/** A run's part of each bill, in their order. */
export const overheadParts = (
  overheads: readonly Overhead[],
  season: Drivers,
): readonly OverheadPart[] =>
  overheads.map((overhead) => overheadPart(overhead, season));

function whole(
  driver: string,
  { runs, lots, gallons, hours }: SeasonDone,
): number {
  if (driver === "runs") return runs;
  if (driver === "lots") return lots;
  if (driver === "lots and runs") return lots + runs;
  if (driver === "gallons packed") return gallons;
  return hours
    .filter(({ line }) => isOn(line, driver))
    .reduce((sum, spent) => sum + spent.hours, 0);
}

function part(driver: string, own: Drivers["own"]): number {
  if (driver === "runs" || driver === "lots and runs") return 1;
  if (driver === "gallons packed") return own.gallons;
  return isOn(own.line, driver) ? own.hours : 0;
}

/** "big-line hours" speaks of every line whose name starts so. */
function isOn(line: string, driver: string): boolean {
  const word = /^(.+)-line hours$/.exec(driver)?.[1];
  return word !== undefined && line.toLowerCase().startsWith(word);
}
