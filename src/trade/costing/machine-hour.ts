import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Hours,
  type Money,
  type MoneyPerHour,
} from "../../measures/quantity";

export interface Machine {
  readonly price: Money;
  readonly resale: Money;
  readonly years: number;
  readonly upkeepPerYear: Money;
  /** Hours it is really used in a year, set-up and clean-down with them. */
  readonly hoursPerYear: Hours;
}

/** What an hour of a machine costs by the hours it is used. Refuses (#VALUE!) no hours, no years and a resale above its price. */
export function machineHourRate(machine: Machine): MoneyPerHour {
  const { price, resale, years, upkeepPerYear, hoursPerYear } = machine;
  if (years <= 0) throw unusable(`years: must be more than 0, not ${years}`);
  if (hoursPerYear <= 0)
    throw unusable(
      `hours: must be more than 0, not ${hoursPerYear}; a machine that stands still has no hour to charge`,
    );
  if (resale > price)
    throw unusable(`resale: ${resale} is more than the price of ${price}`);
  return as<MoneyPerHour>(
    ((price - resale) / years + upkeepPerYear) / hoursPerYear,
  );
}

/** A year's bill carried by the hours worked. Refuses (#VALUE!) no hours. */
export const hourRate = (bill: Money, hours: Hours): MoneyPerHour =>
  machineHourRate({
    price: bill,
    resale: as<Money>(0),
    years: 1,
    upkeepPerYear: as<Money>(0),
    hoursPerYear: hours,
  });
