import { as, type Money, type Share } from "../../measures/quantity";

export interface Order {
  readonly units: number;
  readonly price: Money;
  readonly cost: Money;
  readonly shippingPaidByBuyer: Money;
  readonly shippingCost: Money;
  readonly packing: Money;
  /** Of the whole order: goods, shipping and tax. */
  readonly orderFeeShare: Share;
  readonly orderFee: Money;
  /** Marketing, returns: of the goods only. */
  readonly goodsShare: Share;
  /** Collected on the goods and passed on; it costs us only the fee on it. */
  readonly taxShare: Share;
}

export interface OrderParts {
  readonly goods: Money;
  readonly fees: Money;
  readonly goodsFees: Money;
  readonly profit: Money;
}

/** What one order earns once everybody is paid. Below zero, it costs money. */
export function orderProfit(order: Order): OrderParts {
  const goods = order.units * order.price;
  const charged = goods * (1 + order.taxShare) + order.shippingPaidByBuyer;
  const fees = charged * order.orderFeeShare + order.orderFee;
  const goodsFees = goods * order.goodsShare;
  const spent = order.units * order.cost + order.shippingCost + order.packing;
  return {
    goods: as<Money>(goods),
    fees: as<Money>(fees),
    goodsFees: as<Money>(goodsFees),
    profit: as<Money>(
      goods + order.shippingPaidByBuyer - spent - fees - goodsFees,
    ),
  };
}
