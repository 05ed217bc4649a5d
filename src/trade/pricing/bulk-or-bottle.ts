import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Hours,
  type Kilograms,
  type Money,
  type MoneyPerKg,
} from "../../measures/quantity";

/** Syrup that is free, and the labour there is to bottle it. */
export interface FreeSyrup {
  readonly syrup: Kilograms;
  /** Hours of people, not of the line: four people for an hour are four. Undefined: as many as it takes. */
  readonly labour: Hours | undefined;
}

/** What selling by weight earns over the syrup at today's price. */
export interface BulkWay {
  readonly contribution: MoneyPerKg;
}

/** One way to sell the same syrup in bottles. */
export interface BottleWay {
  readonly name: string;
  /** What a bottle earns over its direct cost, syrup at today's price included. */
  readonly contribution: Money;
  /** Drawn for a bottle, its share of the purge included. */
  readonly syrup: Kilograms;
  /** Its share of set-up and clean-down included. */
  readonly labour: Hours;
}

export type Limit = "the syrup" | "the labour" | "nothing: bulk earns more";

/** The free syrup put into one kind of bottle as far as labour reaches, and the rest sold in bulk. */
export interface Split {
  readonly name: string;
  readonly contributionPerKg: MoneyPerKg;
  readonly bottles: number;
  readonly bottled: Kilograms;
  readonly inBulk: Kilograms;
  readonly labour: Hours;
  readonly earns: Money;
  /** Against selling all of it in bulk. */
  readonly more: Money;
  readonly limitedBy: Limit;
}

/**
 * What the free syrup earns in one kind of bottle, the rest in bulk. Whole bottles only; where a pound earns more in bulk,
 * none. Refuses (#VALUE!) a bottle without syrup and negative stocks.
 */
export function splitOf(free: FreeSyrup, bulk: BulkWay, way: BottleWay): Split {
  if (way.syrup <= 0) throw unusable(`${way.name}: a bottle holds no syrup`);
  if (free.syrup < 0 || (free.labour ?? 0) < 0)
    throw unusable("syrup and labour must not be below 0");
  const contributionPerKg = as<MoneyPerKg>(way.contribution / way.syrup);
  const bySyrup = whole(free.syrup / way.syrup);
  const byLabour =
    free.labour === undefined || way.labour <= 0
      ? Infinity
      : whole(free.labour / way.labour);
  const pays = contributionPerKg > bulk.contribution;
  const bottles = pays ? Math.min(bySyrup, byLabour) : 0;
  const bottled = as<Kilograms>(bottles * way.syrup);
  const inBulk = as<Kilograms>(Math.max(0, free.syrup - bottled));
  const earns = bottles * way.contribution + inBulk * bulk.contribution;
  return {
    name: way.name,
    contributionPerKg,
    bottles,
    bottled,
    inBulk,
    labour: as<Hours>(bottles * way.labour),
    earns: as<Money>(earns),
    more: as<Money>(earns - free.syrup * bulk.contribution),
    limitedBy: !pays
      ? "nothing: bulk earns more"
      : byLabour < bySyrup
        ? "the labour"
        : "the syrup",
  };
}

/** Every way and the one that earns most; the first of equals. */
export function bulkOrBottle(
  free: FreeSyrup,
  bulk: BulkWay,
  ways: readonly BottleWay[],
): { readonly splits: readonly Split[]; readonly best: Split | undefined } {
  const splits = ways.map((way) => splitOf(free, bulk, way));
  return {
    splits,
    best: splits.reduce<Split | undefined>(
      (best, split) => (best && best.earns >= split.earns ? best : split),
      undefined,
    ),
  };
}

/** Whole bottles, where 5,000 ÷ 0.5 is 10,000 whatever the last binary digit says. */
const whole = (bottles: number): number => Math.floor(bottles + 1e-9);
