import { sellingTerms as terms } from "../../terms/book-selling";
import { declareTable } from "../table";

export const channels = declareTable({
  name: "Channels",
  sheet: "Channels",
  about: "The ways we sell and what each keeps, one channel a row.",
  csv: "channels.csv",
  key: ["channel"],
  columns: {
    channel: {
      heading: "Channel",
      csv: "channel",
      term: terms.channel,
      width: 26,
    },
    goalMargin: {
      heading: "Goal margin",
      csv: "target_margin_pct",
      csvPercent: true,
      term: terms.goalMargin,
      usual: [0.02, 0.9],
    },
    buyerMargin: {
      heading: "Buyer margin",
      csv: "buyer_takes_margin_pct",
      csvPercent: true,
      term: terms.buyerMargin,
      blankIs: "0",
    },
    distributorMargin: {
      heading: "Distributor margin",
      csv: "distributor_takes_margin_pct",
      csvPercent: true,
      term: terms.distributorMargin,
      blankIs: "0",
    },
    broker: {
      heading: "Broker",
      csv: "broker_pct",
      csvPercent: true,
      term: terms.broker,
      blankIs: "0",
    },
    feeShare: {
      heading: "Fee share",
      csv: "percent_fee",
      csvPercent: true,
      term: terms.feeShare,
    },
    feePerOrder: {
      heading: "Fee per order",
      csv: "fixed_fee_usd",
      term: terms.feePerOrder,
    },
    feeAppliesTo: {
      heading: "Fee applies to",
      csv: "fee_applies_to",
      term: terms.feeAppliesTo,
      mayBeBlank: true,
      width: 28,
    },
    marketing: {
      heading: "Marketing",
      csv: "marketing_pct",
      csvPercent: true,
      term: terms.marketing,
    },
    promotionAndReturns: {
      heading: "Promotion and returns",
      csv: "promo_and_returns_pct",
      csvPercent: true,
      term: terms.promotion,
    },
    paymentDays: {
      heading: "Payment days",
      csv: "payment_days",
      term: terms.paymentDays,
      mayBeBlank: true,
    },
    bottlesPerOrder: {
      heading: "Bottles per order",
      csv: "typical_order_bottles",
      term: terms.bottlesPerOrder,
    },
    outboundFreight: {
      heading: "Outbound freight",
      csv: "outbound_freight_usd",
      term: terms.outboundFreight,
    },
    shippingCharged: {
      heading: "Shipping charged",
      csv: "shipping_charged_usd",
      term: terms.shippingCharged,
      mayBeBlank: true,
    },
    note: {
      heading: "Note",
      csv: "note",
      term: terms.note,
      mayBeBlank: true,
    },
  },
});
