import {
  as,
  type Hours,
  type PerHour,
  type Seconds,
} from "../../measures/quantity";

export interface Change {
  readonly setup: Seconds;
  readonly clean: Seconds;
}

/** Hours a run takes: set-up, bottles at the line's rate, clean-down. */
export const runHours = (
  bottles: number,
  rate: PerHour,
  change: Change,
): Hours => as<Hours>(bottles / rate + changeHours(change));

/** Hours before and after the bottles. */
export const changeHours = ({ setup, clean }: Change): Hours =>
  as<Hours>((setup + clean) / 3600);
