import {
  as,
  type Hours,
  type Money,
  type Share,
} from "../../measures/quantity";
import type { Overhead } from "./overhead-share";

/** What one run of a season has done that a bill could be shared by. */
export interface SeasonRun {
  readonly run: string;
  readonly product: string;
  readonly line: string;
  readonly bottles: number;
  readonly gallons: number;
  readonly hours: Hours;
  /** Lots and barrels its syrup was drawn from. */
  readonly lotsDrawn: number;
  /** What its bottles sell for; undefined without a price. */
  readonly revenue: Money | undefined;
}

export interface Season {
  readonly runs: readonly SeasonRun[];
  readonly lotsBought: number;
}

/** Ways to share a bill that are compared side by side. */
export const comparedDrivers = [
  "runs",
  "lots drawn",
  "lots and runs",
  "gallons packed",
  "products",
  "revenue",
] as const;

export type ComparedDriver = (typeof comparedDrivers)[number];

/** A bill shared one way. */
export interface BillShared {
  readonly driver: ComparedDriver;
  /** What the driver sums to, those that no run carries included. */
  readonly whole: number;
  /** The bill for one of it. */
  readonly rate: Money;
  /** In the order of the season's runs. */
  readonly byRun: readonly Money[];
  /** What lots carry beside the runs; no bottle has it. */
  readonly toLots: Money;
}

/** The same bill under each driver; undefined where the driver sums to nothing or a figure of it is missing. */
export const sharedEachWay = (
  bill: Money,
  season: Season,
): readonly (BillShared | undefined)[] =>
  comparedDrivers.map((driver) => shared(bill, driver, season));

function shared(
  bill: Money,
  driver: ComparedDriver,
  season: Season,
): BillShared | undefined {
  const own = season.runs.map((run) => measured(driver, run, season));
  if (own.some((amount) => amount === undefined)) return undefined;
  const lots = driver === "lots and runs" ? season.lotsBought : 0;
  const whole = own.reduce<number>((sum, amount) => sum + (amount ?? 0), lots);
  if (whole <= 0) return undefined;
  return {
    driver,
    whole,
    rate: as<Money>(bill / whole),
    byRun: own.map((amount) => as<Money>((bill * (amount ?? 0)) / whole)),
    toLots: as<Money>((bill * lots) / whole),
  };
}

function measured(
  driver: ComparedDriver,
  run: SeasonRun,
  { runs }: Season,
): number | undefined {
  switch (driver) {
    case "runs":
    case "lots and runs":
      return 1;
    case "lots drawn":
      return run.lotsDrawn;
    case "gallons packed":
      return run.gallons;
    case "revenue":
      return run.revenue;
    // A product counts once; its runs share it by their bottles.
    case "products":
      return (
        run.bottles /
        runs
          .filter(({ product }) => product === run.product)
          .reduce((sum, { bottles }) => sum + bottles, 0)
      );
  }
}

/** Who carries a season's bill by its own driver. */
export interface BillCarried {
  readonly toBulk: Money;
  readonly toRuns: Money;
  readonly toLots: Money;
  /** What nobody carries: the driver is not known, or it sums to nothing. */
  readonly gap: Money;
  readonly carried: Share;
}

/** Splits a bill between totes, runs and lots; the four parts add up to it. */
export function billCarried(
  { perYear, toBulk, driver }: Overhead,
  { runs, lotsBought }: Season,
): BillCarried {
  const bulk = perYear * toBulk;
  const rest = perYear - bulk;
  const [byRuns, byLots] = carriers(
    driver.trim().toLowerCase(),
    runs,
    lotsBought,
  );
  const whole = byRuns + byLots;
  const toLots = whole > 0 ? (rest * byLots) / whole : 0;
  const toRuns = whole > 0 ? rest - toLots : 0;
  const gap = whole > 0 ? 0 : rest;
  return {
    toBulk: as<Money>(bulk),
    toRuns: as<Money>(toRuns),
    toLots: as<Money>(toLots),
    gap: as<Money>(gap),
    carried: as<Share>(perYear === 0 ? 1 : 1 - gap / perYear),
  };
}

function carriers(
  driver: string,
  runs: readonly SeasonRun[],
  lots: number,
): readonly [runs: number, lots: number] {
  if (driver === "runs") return [runs.length, 0];
  if (driver === "lots") return [0, lots];
  if (driver === "lots and runs") return [runs.length, lots];
  if (driver === "gallons packed")
    return [runs.reduce((sum, { gallons }) => sum + gallons, 0), 0];
  return [hoursOn(driver, runs), 0];
}

/** Hours on the lines a driver such as "big-line hours" speaks of; 0 for a driver that names no line. */
export function hoursOn(driver: string, runs: readonly SeasonRun[]): number {
  const line = /^(.+)-line hours$/.exec(driver)?.[1];
  return line === undefined
    ? 0
    : runs
        .filter((run) => run.line.toLowerCase().startsWith(line))
        .reduce((sum, { hours }) => sum + hours, 0);
}
