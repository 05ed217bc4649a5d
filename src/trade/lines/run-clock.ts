import { as, type Hours } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";

/** A break that falls due after so many hours of work, and how long it lasts. */
export interface Break {
  readonly after: Hours;
  readonly length: Hours;
}

export interface Shift {
  /** Hours of work: set-up, bottles and clean-down. */
  readonly hours: Hours;
  readonly people: number;
  readonly rest?: Break;
  /** Hours of work in a day; what a run takes beyond them is overtime. */
  readonly dayLength?: Hours;
  /** A worksheet day with its part of a day: 46,352.29 is seven in the morning. */
  readonly start?: number;
}

export interface RunClock {
  readonly breaks: number;
  /** From the start of set-up to the end of clean-down, breaks counted. */
  readonly elapsed: Hours;
  /** Hours of work of everybody at the line; breaks are not work. */
  readonly crewHours: number;
  /** Of the crew-hours, those beyond a day's length; undefined where that is not known. */
  readonly overtime: number | undefined;
  /** The minute clean-down is over, as a worksheet day; undefined without a start. */
  readonly finish: number | undefined;
}

/** When a run is over and how many hours people work on it. A break is taken only while there is work left after it. */
export function runClock(shift: Shift): RunClock {
  const { hours, people, rest, dayLength, start } = shift;
  const breaks = rest ? Math.max(0, wholeUp(hours / rest.after) - 1) : 0;
  const elapsed = as<Hours>(hours + breaks * (rest?.length ?? 0));
  return {
    breaks,
    elapsed,
    crewHours: hours * people,
    overtime:
      dayLength === undefined
        ? undefined
        : Math.max(0, hours - dayLength) * people,
    finish:
      start === undefined ? undefined : start + wholeUp(elapsed * 60) / 1440,
  };
}
