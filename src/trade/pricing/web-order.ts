import { as, type Money, type Share } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";

/** What a channel takes of an order, and what sending it costs. */
export interface OrderTerms {
  readonly price: Money;
  /** A bottle. */
  readonly cost: Money;
  readonly feeShare: Share;
  readonly feePerOrder: Money;
  /** What the fee is a share of, beside the goods. */
  readonly feeOnShipping: boolean;
  readonly feeOnTax: boolean;
  /** Collected on the goods and passed on. */
  readonly salesTax: Share;
  /** Marketing, promotion, returns and broker: of the goods only. */
  readonly goodsShare: Share;
  /** What the buyer pays for shipping, an order. */
  readonly shippingCharged: Money;
  readonly shippingFirst: Money;
  readonly shippingEachFurther: Money;
  /** Box, filling and label of a parcel. */
  readonly mailer: Money;
}

export interface OrderEarned {
  readonly bottles: number;
  readonly goods: Money;
  readonly fees: Money;
  readonly goodsFees: Money;
  readonly sending: Money;
  readonly left: Money;
}

/** What an order leaves once bottles, fees, marketing and sending are paid. Below zero, it costs money. */
export function orderEarned(terms: OrderTerms, bottles: number): OrderEarned {
  const goods = bottles * terms.price;
  const charged =
    goods * (1 + (terms.feeOnTax ? terms.salesTax : 0)) +
    (terms.feeOnShipping ? terms.shippingCharged : 0);
  const fees = charged * terms.feeShare + terms.feePerOrder;
  const goodsFees = goods * terms.goodsShare;
  const sending =
    terms.shippingFirst +
    (bottles - 1) * terms.shippingEachFurther +
    terms.mailer;
  return {
    bottles,
    goods: as<Money>(goods),
    fees: as<Money>(fees),
    goodsFees: as<Money>(goodsFees),
    sending: as<Money>(sending),
    left: as<Money>(
      goods +
        terms.shippingCharged -
        bottles * terms.cost -
        fees -
        goodsFees -
        sending,
    ),
  };
}

/** A hundredth of a cent is rounding, not a loss. */
const ROUNDING = 0.0001;

/** The smallest order that costs no money; undefined where more bottles never make up for it. */
export function firstOrderThatPays(terms: OrderTerms): number | undefined {
  const first = orderEarned(terms, 1).left;
  if (first >= -ROUNDING) return 1;
  const each = orderEarned(terms, 2).left - first;
  return each > ROUNDING ? 1 + wholeUp((-first - ROUNDING) / each) : undefined;
}
