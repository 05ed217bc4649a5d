import { answerOrNone } from "../../measures/cannot-answer";
import {
  as,
  type Hours,
  type Kilograms,
  type Money,
  type MoneyPerHour,
  type MoneyPerKg,
  type PerHour,
} from "../../measures/quantity";
import { crossover, type RunCost } from "./crossover";
import { type Heads, lineLimit, lineRate, type Station } from "./line-rate";
import { type Change, changeHours, runHours } from "./run-hours";

/** A line as it would fill one kind of bottle. */
export interface Line extends Change {
  readonly name: string;
  readonly heads: Heads;
  /** The slowest station beside the heads, where there is one. */
  readonly station?: Station;
  readonly purge: Kilograms;
  /** Loaded wages of everybody at the line. */
  readonly crew: MoneyPerHour;
  /** Some product's usual line; others are taken only when asked for by name. */
  readonly usual: boolean;
}

export interface LineOption extends RunCost {
  readonly line: Line;
  readonly rate: PerHour;
  readonly limitedBy: string;
  readonly hours: Hours;
  /** Set-up, clean-down, purged syrup and crew for the whole run. */
  readonly cost: Money;
  readonly inChoice: boolean;
  /** The run size at which this line and the chosen one cost the same, rounded up; undefined where one is always cheaper. */
  readonly crossover: number | undefined;
}

export interface LineChoice {
  readonly chosen: LineOption | undefined;
  readonly options: readonly LineOption[];
}

/** Every line's cost for a run, and the cheapest of the usual ones (or the one asked for). */
export function chooseLine(
  lines: readonly Line[],
  run: {
    readonly bottles: number;
    readonly bulkPrice: MoneyPerKg;
    readonly asked?: string;
  },
): LineChoice {
  const options = lines.map((line) => {
    const rate = lineRate(line.heads, stationsOf(line));
    const fixed = as<Money>(
      changeHours(line) * line.crew + line.purge * run.bulkPrice,
    );
    const each = as<Money>(line.crew / rate);
    return {
      line,
      rate,
      limitedBy: lineLimit(line.heads, stationsOf(line)),
      hours: runHours(run.bottles, rate, line),
      fixed,
      each,
      cost: as<Money>(fixed + run.bottles * each),
      inChoice: mayRun(line, run.asked),
    };
  });
  const chosen = options
    .filter((option) => option.inChoice)
    .reduce<(typeof options)[number] | undefined>(
      (best, option) => (best && best.cost <= option.cost ? best : option),
      undefined,
    );
  const compared = options.map((option) => ({
    ...option,
    crossover: chosen && option !== chosen ? evenAt(chosen, option) : undefined,
  }));
  return {
    options: compared,
    chosen: compared.find(({ line }) => line === chosen?.line),
  };
}

/** Whether a line may be chosen: the one asked for, or a usual one. One whose crew costs nothing has wages missing; it must not win by that. */
export const mayRun = (line: Line, asked: string | undefined): boolean =>
  line.crew > 0 &&
  (asked === undefined ? line.usual : sameLine(line.name, asked));

/** Where the line with the lower cost for each bottle overtakes the other. */
function evenAt(a: RunCost, b: RunCost): number | undefined {
  return answerOrNone(() =>
    b.each < a.each ? crossover(a, b) : crossover(b, a),
  );
}

const stationsOf = ({ station }: Line): readonly Station[] =>
  station ? [station] : [];

const sameLine = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().toLowerCase();
