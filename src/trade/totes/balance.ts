import { leftOf } from "../../measures/exact";
import { as, type Kilograms } from "../../measures/quantity";

/** Weight of a contract still to ship; negative when more was shipped than agreed. */
export const contractLeft = (
  contract: Kilograms,
  shipped: readonly Kilograms[],
): Kilograms => as<Kilograms>(leftOf(contract, shipped));

/** Weight that came in and neither went out nor is in stock; negative when more went out than came in. */
export const massBalance = (
  received: Kilograms,
  out: readonly Kilograms[],
  stock: Kilograms,
): Kilograms => as<Kilograms>(leftOf(received, [...out, stock]));
