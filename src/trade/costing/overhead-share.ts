import { as, type Money, type Share } from "../../measures/quantity";

/** A season's bill and what it is shared out by. */
export interface Overhead {
  readonly item: string;
  readonly perYear: Money;
  readonly toBulk: Share;
  readonly driver: string;
}

/** What a season has done so far, and what this run adds to compare with it. */
export interface Drivers {
  readonly runs: number;
  readonly lots: number;
  readonly gallons: number;
  /** Hours with set-up and clean-down, by line. */
  readonly hours: readonly { readonly line: string; readonly hours: number }[];
  readonly own: {
    readonly gallons: number;
    readonly hours: number;
    readonly line: string;
  };
}

/** A run's part of a bill by its driver; undefined for a driver we do not know or one that sums to nothing. */
export function overheadShare(
  { perYear, toBulk, driver }: Overhead,
  season: Drivers,
): Money | undefined {
  const [own, whole] = shares(driver.trim().toLowerCase(), season);
  return whole > 0
    ? as<Money>((perYear * (1 - toBulk) * own) / whole)
    : undefined;
}

function shares(
  driver: string,
  { runs, lots, gallons, hours, own }: Drivers,
): readonly [own: number, whole: number] {
  if (driver === "runs") return [1, runs];
  if (driver === "lots") return [0, lots];
  if (driver === "lots and runs") return [1, lots + runs];
  if (driver === "gallons packed") return [own.gallons, gallons];
  const line = /^(.+)-line hours$/.exec(driver)?.[1];
  if (line === undefined) return [0, 0];
  const isLine = (name: string): boolean => name.toLowerCase().startsWith(line);
  return [
    isLine(own.line) ? own.hours : 0,
    hours
      .filter((spent) => isLine(spent.line))
      .reduce((sum, spent) => sum + spent.hours, 0),
  ];
}
