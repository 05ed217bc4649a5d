import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../../measures/quantity";

export interface Aging {
  /** What the syrup in the barrel had cost. */
  readonly syrup: Money;
  readonly out: Kilograms;
  readonly barrel: Money;
  /** What the emptied barrel is sold for. */
  readonly resale: Money;
  /** Fills the barrel serves in all. */
  readonly fills: number;
  readonly months: number;
  readonly storagePerMonth: Money;
  readonly moneyRatePerYear: Share;
}

export interface AgedParts {
  readonly syrup: Money;
  readonly barrel: Money;
  readonly storage: Money;
  /** Simple interest on the syrup for the months it lies. */
  readonly money: Money;
}

/** What one fill has cost by the time it is emptied, in its parts. Refuses (#VALUE!) a resale above the barrel's price. */
export function agedParts(aging: Aging): AgedParts {
  if (aging.resale > aging.barrel)
    throw unusable(
      `resale: ${aging.resale} is more than the barrel's price of ${aging.barrel}`,
    );
  return {
    syrup: aging.syrup,
    barrel: as<Money>((aging.barrel - aging.resale) / aging.fills),
    storage: as<Money>(aging.storagePerMonth * aging.months),
    money: as<Money>(
      (aging.syrup * aging.moneyRatePerYear * aging.months) / 12,
    ),
  };
}

/** The price of aged syrup by the weight that comes out, not by what went in. */
export function agedPrice(aging: Aging): MoneyPerKg {
  const { syrup, barrel, storage, money } = agedParts(aging);
  return as<MoneyPerKg>((syrup + barrel + storage + money) / aging.out);
}
