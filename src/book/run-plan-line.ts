import { as, type Hours, type Money } from "../measures/quantity";
import { wholeUp } from "../measures/whole-up";
import type { BottleFacts } from "../trade/costing/bottle-cost";
import {
  chooseLine,
  type LineChoice,
  type LineOption,
} from "../trade/lines/choice";
import { type RunClock, runClock } from "../trade/lines/run-clock";
import type { Book } from "./book";
import { isSameName as same } from "./keys";
import { setting } from "./setting";

/** The cheapest other line that is some product's usual one, and what the chosen line saves against it. */
export interface OtherLine {
  readonly option: LineOption;
  /** Below 0 where a dearer line was asked for. */
  readonly saved: Money;
  readonly crossoverCases: number | undefined;
}

/** No line is chosen without a bulk price: what the purge costs is part of the choice. */
export const choiceOf = (facts: BottleFacts): LineChoice =>
  facts.bulkPrice === undefined
    ? { chosen: undefined, options: [] }
    : chooseLine(facts.lines, {
        bottles: facts.bottles,
        bulkPrice: facts.bulkPrice,
        ...(facts.lineAsked === undefined ? {} : { asked: facts.lineAsked }),
      });

export function otherLine(
  { options }: LineChoice,
  chosen: LineOption,
  perCase: number,
): OtherLine | undefined {
  const option = options
    .filter((o) => o !== chosen && o.line.usual && o.line.crew > 0)
    .reduce<LineOption | undefined>(
      (best, next) => (best && best.cost <= next.cost ? best : next),
      undefined,
    );
  return (
    option && {
      option,
      saved: as<Money>(option.cost - chosen.cost),
      crossoverCases:
        option.crossover === undefined
          ? undefined
          : wholeUp(option.crossover / perCase),
    }
  );
}

export const peopleAt = (book: Book, line: string): number =>
  book.crew
    .filter((row) => same(row.line, line))
    .reduce((sum, row) => sum + row.people, 0);

export function clockOf(
  book: Book,
  { hours }: LineOption,
  people: number,
  start: number | undefined,
): RunClock {
  const after = setting(book, "Break after");
  const length = setting(book, "Break length");
  const day = setting(book, "Day length");
  return runClock({
    hours,
    people,
    ...(after === undefined || length === undefined
      ? {}
      : {
          rest: {
            after: as<Hours>(after / 3600),
            length: as<Hours>(length / 3600),
          },
        }),
    ...(day === undefined ? {} : { dayLength: as<Hours>(day / 3600) }),
    ...(start === undefined ? {} : { start }),
  });
}
