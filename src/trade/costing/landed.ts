import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../../measures/quantity";
import { poundsText } from "../../measures/pounds-text";

export interface Purchase {
  readonly net: Kilograms;
  readonly syrup: Money;
  readonly freight: Money;
  readonly tests: Money;
}

/** What a purchase costs by weight, delivered and tested. Deposits that come back are no cost. */
export const landedPrice = ({
  net,
  syrup,
  freight,
  tests,
}: Purchase): MoneyPerKg => as<MoneyPerKg>((syrup + freight + tests) / net);

export interface Losses {
  readonly net: Kilograms;
  readonly filterLoss: Share;
  /** What stays in the drums. */
  readonly heel: Kilograms;
}

/** What remains to be packed after the filter and the drum heels. Refuses (#VALUE!) losses that leave nothing. */
export function usableWeight({ net, filterLoss, heel }: Losses): Kilograms {
  const usable = net * (1 - filterLoss) - heel;
  if (usable <= 0)
    throw unusable(
      `filter loss and heel: they leave nothing of ${poundsText(net)} lb`,
    );
  return as<Kilograms>(usable);
}

/** The landed price carried by what can be packed. */
export const usablePrice = (landed: MoneyPerKg, losses: Losses): MoneyPerKg =>
  as<MoneyPerKg>((landed * losses.net) / usableWeight(losses));
