import { answerOrNone } from "../measures/cannot-answer";
import {
  as,
  type DaySerial,
  type Money,
  type Share,
} from "../measures/quantity";
import { bottleCost, type BottleCost } from "../trade/costing/bottle-cost";
import { fromShelf, shelfPrice, type Taken } from "../trade/pricing/shelf";
import {
  firstOrderThatPays,
  type OrderEarned,
  orderEarned,
  type OrderTerms,
} from "../trade/pricing/web-order";
import type { Book, BookRow } from "./book";
import { type CostingFacts, costingFacts, priceIn } from "./costing-facts";
import { usualRun } from "./usual-run";

export interface ChannelsQuestion {
  readonly product: string;
  readonly bottles?: number;
  readonly asOf?: DaySerial;
  /** Orders of so many bottles; by default of one, two, four and six. */
  readonly sizes?: readonly number[];
  /** What a shop asks; by default the highest price we ask anywhere. */
  readonly shelf?: Money;
  readonly shippingFurther?: Money;
  readonly mailer?: Money;
  readonly salesTax?: Share;
}

export const USUAL_SIZES = [1, 2, 4, 6] as const;

export interface ChannelOrders {
  readonly channel: BookRow<"channels">;
  readonly price: Money | undefined;
  readonly terms: OrderTerms | undefined;
  readonly usual: OrderEarned | undefined;
  readonly sizes: readonly OrderEarned[];
  /** The smallest order that pays, with overheads and without. */
  readonly firstPays: number | undefined;
  readonly firstPaysDirect: number | undefined;
  /** Back from the shelf, for a channel with a shop in it. */
  readonly shelf: (Taken & { readonly left: Money | undefined }) | undefined;
  /** Forward to the shelf from our price. */
  readonly onShelf: Money | undefined;
}

export interface ProductChannels {
  readonly facts: CostingFacts;
  readonly cost: BottleCost;
  readonly bottles: number;
  readonly shelf: Money | undefined;
  readonly channels: readonly ChannelOrders[];
}

/** What each channel leaves of a product, order by order. Refuses (#VALUE!) a product the book does not have. */
export function productChannels(
  book: Book,
  question: ChannelsQuestion,
): ProductChannels {
  const bottles = question.bottles ?? usualRun(book, question.product);
  const facts = costingFacts(book, {
    product: question.product,
    bottles,
    ...(question.asOf === undefined ? {} : { asOf: question.asOf }),
  });
  const cost = bottleCost(facts.bottle);
  const priced = book.channels.map((channel) => ({
    channel,
    price: priceIn(book, facts.product.product, channel.channel, facts.asOf),
  }));
  const asked = priced.flatMap(({ price }) => price ?? []);
  const shelf =
    question.shelf ??
    (asked.length === 0 ? undefined : as<Money>(Math.max(...asked)));
  return {
    facts,
    cost,
    bottles,
    shelf,
    channels: priced.map(({ channel, price }) =>
      channelOrders(channel, price, cost, shelf, question),
    ),
  };
}

/** What one channel leaves of a product at a price, order by order. */
export function channelOrders(
  channel: BookRow<"channels">,
  price: Money | undefined,
  cost: BottleCost,
  shelf: Money | undefined,
  question: ChannelsQuestion,
): ChannelOrders {
  const full = cost.full.replacement;
  const direct = cost.direct.replacement;
  const byBottle = channel.bottlesPerOrder > 0 && price !== undefined;
  const terms =
    byBottle && full !== undefined
      ? termsOf(channel, price, full, question)
      : undefined;
  const chain = {
    shop: channel.buyerMargin ?? as<Share>(0),
    distributor: channel.distributorMargin ?? as<Share>(0),
  };
  const taken =
    chain.shop > 0 && shelf !== undefined
      ? fromShelf(shelf, chain, {
          broker: channel.broker ?? as<Share>(0),
          promotion: channel.promotionAndReturns ?? as<Share>(0),
        })
      : undefined;
  return {
    channel,
    price,
    terms,
    usual: terms && orderEarned(terms, channel.bottlesPerOrder),
    sizes: terms
      ? (question.sizes ?? USUAL_SIZES).map((n) => orderEarned(terms, n))
      : [],
    firstPays: terms && firstOrderThatPays(terms),
    firstPaysDirect:
      terms && direct !== undefined
        ? firstOrderThatPays({ ...terms, cost: direct })
        : undefined,
    shelf: taken && {
      ...taken,
      left:
        full === undefined
          ? undefined
          : as<Money>(taken.invoice - taken.broker - taken.promotion - full),
    },
    onShelf:
      chain.shop > 0 && price !== undefined
        ? answerOrNone(() => shelfPrice(price, chain))
        : undefined,
  };
}

const termsOf = (
  channel: BookRow<"channels">,
  price: Money,
  cost: Money,
  question: ChannelsQuestion,
): OrderTerms => ({
  price,
  cost,
  feeShare: channel.feeShare ?? as<Share>(0),
  feePerOrder: channel.feePerOrder ?? as<Money>(0),
  feeOnShipping: /shipping/i.test(channel.feeAppliesTo ?? ""),
  feeOnTax: /tax/i.test(channel.feeAppliesTo ?? ""),
  salesTax: question.salesTax ?? as<Share>(0),
  goodsShare: as<Share>(
    (channel.marketing ?? 0) +
      (channel.promotionAndReturns ?? 0) +
      (channel.broker ?? 0),
  ),
  shippingCharged: channel.shippingCharged ?? as<Money>(0),
  shippingFirst: channel.outboundFreight ?? as<Money>(0),
  // Only what is sent in a parcel has a mailer and dearer postage for more bottles.
  shippingEachFurther: sent(channel, question.shippingFurther),
  mailer: sent(channel, question.mailer),
});

const sent = (
  { outboundFreight }: BookRow<"channels">,
  amount: Money | undefined,
): Money =>
  outboundFreight > 0 && amount !== undefined ? amount : as<Money>(0);
