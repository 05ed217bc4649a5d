import type { Brix, MoneyPerKg } from "../measures/quantity";
import type { Lot } from "../trade/costing/lot-cost";

/** Where a product's syrup comes from and what it costs; `needs` names what the book lacks for it. */
export interface SyrupSource {
  readonly lots: readonly Lot[];
  readonly brix: Brix | undefined;
  /** What the next pound would cost. */
  readonly replacement: MoneyPerKg | undefined;
  readonly needs: readonly string[];
}
