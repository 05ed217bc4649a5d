import { priceTerms as terms } from "../terms/price";
import { optional } from "../terms/term";
import { type Order, orderProfit } from "../trade/pricing/order-profit";
import {
  fromShelf,
  netOf,
  shelfPrice,
  type Taken,
} from "../trade/pricing/shelf";
import { defineFunction, type Values } from "./define";
import { dollars, figure, percent } from "./wording";

const shelfArgs = {
  shelf: terms.shelf,
  shop_margin: terms.shopMargin,
  distributor_margin: optional(terms.distributorMargin, 0),
  broker: optional(terms.broker, 0),
  promotion: optional(terms.promotion, 0),
} as const;

const takenOf = (values: Values<typeof shelfArgs>): Taken =>
  fromShelf(
    values.shelf,
    { shop: values.shop_margin, distributor: values.distributor_margin },
    { broker: values.broker, promotion: values.promotion },
  );

const orderArgs = {
  units: terms.units,
  price: terms.price,
  cost: terms.cost,
  shipping_paid_by_buyer: optional(terms.shippingPaid, 0),
  shipping_cost: optional(terms.shippingCost, 0),
  packing: optional(terms.packing, 0),
  order_fee_share: optional(terms.orderFeeShare, 0),
  order_fee: optional(terms.orderFee, 0),
  goods_share: optional(terms.goodsShare, 0),
  tax_share: optional(terms.taxShare, 0),
} as const;

const orderOf = (values: Values<typeof orderArgs>): Order => ({
  units: values.units,
  price: values.price,
  cost: values.cost,
  shippingPaidByBuyer: values.shipping_paid_by_buyer,
  shippingCost: values.shipping_cost,
  packing: values.packing,
  orderFeeShare: values.order_fee_share,
  orderFee: values.order_fee,
  goodsShare: values.goods_share,
  taxShare: values.tax_share,
});

export const priceChannelFunctions = [
  defineFunction({
    name: "NET_FROM_SHELF",
    family: "Price",
    summary:
      "What we keep of a shelf price after shop, distributor, broker and promotion.",
    question: "What do I keep of the price on the shelf?",
    args: shelfArgs,
    gives: { about: "what we keep", unit: "money each" },
    basis: ["arithmetic", "commonPractice"],
    notes: [
      "The margins of shop and distributor follow one another; they are not added. Broker and promotion are shares of our invoice.",
    ],
    examples: [
      {
        args: [13.49, 0.38, 0.25, 0.05, 0.04],
        gives: 5.7083,
        within: 0.00005,
        source:
          "worked example, arithmetic: 13.49 × 0.62 × 0.75 = 6.2729; − 0.3136 − 0.2509",
      },
      {
        args: [10, "40 %"],
        gives: 6,
        source: "hand arithmetic: 10 × 0.60, sold straight to the shop",
      },
    ],
    native: ({ shelf, shop_margin, distributor_margin, broker, promotion }) =>
      `(${shelf}*(1-${shop_margin})*(1-${distributor_margin})*(1-${broker}-${promotion}))`,
    compute: (values) => netOf(takenOf(values)),
    why: (values, answer) => {
      const { invoice, broker, promotion } = takenOf(values);
      return `${dollars(values.shelf)} × (1 − ${percent(values.shop_margin)}) × (1 − ${percent(values.distributor_margin)}) = ${dollars(invoice)} invoice; − ${dollars(broker)} broker − ${dollars(promotion)} promotion = ${dollars(answer)}`;
    },
  }),
  defineFunction({
    name: "SHELF_FROM_NET",
    family: "Price",
    summary:
      "Shelf price at which shop and distributor keep their margins on our price.",
    question: "What will my price become on the shelf?",
    args: {
      our_price: terms.price,
      shop_margin: terms.shopMargin,
      distributor_margin: optional(terms.distributorMargin, 0),
    },
    gives: { about: "shelf price", unit: "money each" },
    basis: ["arithmetic", "commonPractice"],
    examples: [
      {
        args: [6.27285, 0.38, 0.25],
        gives: 13.49,
        source:
          "worked example, arithmetic, read backwards: 6.27285 ÷ 0.75 ÷ 0.62",
      },
      {
        args: [6, "40 %"],
        gives: 10,
        source: "hand arithmetic: 6 ÷ 0.60",
      },
    ],
    native: ({ our_price, shop_margin, distributor_margin }) =>
      `(${our_price}/(1-${distributor_margin})/(1-${shop_margin}))`,
    compute: ({ our_price, shop_margin, distributor_margin }) =>
      shelfPrice(our_price, {
        shop: shop_margin,
        distributor: distributor_margin,
      }),
    why: ({ our_price, shop_margin, distributor_margin }, answer) =>
      `${dollars(our_price)} ÷ (1 − ${percent(distributor_margin)}) ÷ (1 − ${percent(shop_margin)}) = ${dollars(answer)} on the shelf`,
  }),
  defineFunction({
    name: "ORDER_PROFIT",
    family: "Price",
    summary:
      "Profit of one online order after goods, shipping, packing and fees.",
    question: "What does an order of one, two or four bottles earn?",
    args: orderArgs,
    gives: { about: "profit of the order", unit: "money an order" },
    basis: ["arithmetic", "commonPractice"],
    notes: [
      "The order fee is on goods, shipping and tax together; the share of goods is on the goods only.",
      "Tax is taken as a share of the goods and passed on; only the fee on it costs anything.",
    ],
    examples: [
      {
        args: [2, 15, 4.85, 8, 11.4, 1.2, 0.03, 0.3, 0.05, 0.06],
        gives: 12.706,
        source:
          "hand arithmetic: 30 + 8 − 9.70 − 11.40 − 1.20 = 15.70; fee 3 % of 39.80 + 0.30 = 1.494; 5 % of 30 = 1.50",
      },
      {
        args: [1, 15, 4.85, 0, 11.4, 1.2],
        gives: -2.45,
        source: "hand arithmetic: 15 − 4.85 − 11.40 − 1.20, a loss",
      },
    ],
    native: (a) =>
      `(${a.units}*${a.price}*(1-${a.goods_share}-(1+${a.tax_share})*${a.order_fee_share})+${a.shipping_paid_by_buyer}*(1-${a.order_fee_share})-${a.units}*${a.cost}-${a.shipping_cost}-${a.packing}-${a.order_fee})`,
    compute: (values) => orderProfit(orderOf(values)).profit,
    why: (values, answer) => {
      const { goods, fees, goodsFees } = orderProfit(orderOf(values));
      return `${figure(values.units)} × ${dollars(values.price)} = ${dollars(goods)} + ${dollars(values.shipping_paid_by_buyer)} shipping charged − ${dollars(values.units * values.cost)} goods at cost − ${dollars(values.shipping_cost)} shipping − ${dollars(values.packing)} packing − ${dollars(fees)} order fees − ${dollars(goodsFees)} marketing and returns = ${dollars(answer)}`;
    },
  }),
];
