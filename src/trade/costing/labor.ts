import {
  as,
  type Money,
  type MoneyPerHour,
  type PerHour,
  type Share,
} from "../../measures/quantity";
import { type Change, changeHours } from "../lines/run-hours";
import { toDraw } from "./draw";

/** What an hour at the line costs: wage and payroll add-ons, carried by the hours worked only. */
export const loadedWage = (
  wage: MoneyPerHour,
  addOns: Share,
  idle: Share,
): MoneyPerHour => as<MoneyPerHour>(toDraw(wage * (1 + addOns), idle, "idle"));

export interface Labor {
  /** Set-up and clean-down, shared by the bottles of the run. */
  readonly change: Money;
  /** At the running line. */
  readonly running: Money;
}

/** Labour in one bottle of a run, in its two parts. */
export const laborPerBottle = (
  crew: MoneyPerHour,
  run: { readonly bottles: number; readonly rate: PerHour } & Change,
): Labor => ({
  change: as<Money>((crew * changeHours(run)) / run.bottles),
  running: as<Money>(crew / run.rate),
});
