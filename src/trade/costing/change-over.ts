import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerHour,
  type MoneyPerKg,
} from "../../measures/quantity";
import { type Change, changeHours } from "../lines/run-hours";

export interface ChangeOver extends Change {
  readonly crew: MoneyPerHour;
  /** Syrup rinsed out at the start and at the end. */
  readonly purge: Kilograms;
  readonly syrup: MoneyPerKg;
  /** Chemicals and water for one change. */
  readonly cleaning: Money;
}

export interface ChangeOverCost {
  readonly crew: Money;
  readonly syrup: Money;
  readonly cleaning: Money;
  readonly total: Money;
}

/** What one change of a line costs before the first bottle, whatever the run. */
export function changeOverCost(change: ChangeOver): ChangeOverCost {
  const crew = change.crew * changeHours(change);
  const syrup = change.purge * change.syrup;
  return {
    crew: as<Money>(crew),
    syrup: as<Money>(syrup),
    cleaning: change.cleaning,
    total: as<Money>(crew + syrup + change.cleaning),
  };
}
