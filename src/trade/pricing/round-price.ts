import { unanswerable } from "../../measures/cannot-answer";
import { roundHalfUp } from "../../measures/money";
import { as, type Money } from "../../measures/quantity";

export type Direction = "up" | "down" | "nearest";

/**
 * The next price with an ending such as 0.99; a price that already ends so stays. Half way, nearest is up.
 * No answer (#N/A) where there is none below.
 */
export function roundPrice(
  price: Money,
  ending: Money,
  direction: Direction,
): Money {
  const steps = roundHalfUp(price - ending, 6);
  const whole =
    direction === "up"
      ? Math.ceil(steps)
      : direction === "down"
        ? Math.floor(steps)
        : Math.max(0, Math.floor(steps + 0.5));
  if (whole < 0)
    throw unanswerable(`no price ending in ${ending} is at or below ${price}`);
  return as<Money>(roundHalfUp(whole + ending, 6));
}
