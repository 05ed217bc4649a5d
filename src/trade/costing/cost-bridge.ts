import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerKg,
} from "../../measures/quantity";

/** What a bottle cost in one season, as it was made. */
export interface SeasonCost {
  /** What its syrup cost by weight. */
  readonly syrupPrice: MoneyPerKg;
  /** Syrup in the bottle. */
  readonly filled: Kilograms;
  /** Syrup drawn for it: what was filled, lost and purged. */
  readonly drawn: Kilograms;
  /** With freight in. */
  readonly materials: Money;
  readonly labour: Money;
  readonly heat: Money;
  /** Of bills that both seasons have. */
  readonly overhead: Money;
  /** Of bills that only this season has. */
  readonly ownBills: Money;
}

export interface BridgeStep {
  readonly name: string;
  readonly change: Money;
}

export interface CostBridge {
  readonly before: Money;
  readonly steps: readonly BridgeStep[];
  readonly after: Money;
}

export const seasonCostTotal = (cost: SeasonCost): Money =>
  as<Money>(
    cost.drawn * cost.syrupPrice +
      cost.materials +
      cost.labour +
      cost.heat +
      cost.overhead +
      cost.ownBills,
  );

/**
 * The way from one season's cost to another's. The price of syrup is taken at the weight drawn before, the weights at
 * the price after, so that nothing is counted twice and the steps add up to the change.
 */
export function costBridge(before: SeasonCost, after: SeasonCost): CostBridge {
  const price = after.syrupPrice;
  const lost = (cost: SeasonCost): number => cost.drawn - cost.filled;
  return {
    before: seasonCostTotal(before),
    steps: [
      step("Syrup price", (price - before.syrupPrice) * before.drawn),
      step("Fill", (after.filled - before.filled) * price),
      step("Syrup lost and purged", (lost(after) - lost(before)) * price),
      step("Materials", after.materials - before.materials),
      step("Labour", after.labour - before.labour),
      step("Heat and power", after.heat - before.heat),
      step("Overheads of both seasons", after.overhead - before.overhead),
      step("Bills only one season has", after.ownBills - before.ownBills),
    ],
    after: seasonCostTotal(after),
  };
}

const step = (name: string, change: number): BridgeStep => ({
  name,
  change: as<Money>(change),
});
