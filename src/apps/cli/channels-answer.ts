import type { ChannelOrders, ProductChannels } from "../../book/channel-orders";
import { channelFindings } from "../../book/channel-findings";
import type { Finding } from "../../book/finding";
import { isoDate } from "../../measures/read-date";
import type { OrderEarned } from "../../trade/pricing/web-order";

type Figure = number | null;

interface OrderJson {
  readonly bottles: number;
  readonly goods: number;
  readonly fees: number;
  readonly marketingAndReturns: number;
  readonly sending: number;
  readonly left: number;
}

/** The answer of `channels --json`; money is in the books' currency. */
export interface ChannelsJson {
  readonly product: string;
  readonly asOf: string;
  readonly bottles: number;
  readonly cost: Figure;
  readonly direct: Figure;
  /** The closed season the cost's overheads are estimated from; null where they are the season's own. */
  readonly estimateFromSeason: Figure;
  readonly shelfPrice: Figure;
  readonly channels: readonly {
    readonly channel: string;
    readonly price: Figure;
    readonly goal: number;
    readonly shippingCharged: Figure;
    readonly usualOrder: (OrderJson & { readonly leftOfGoods: number }) | null;
    readonly orders: readonly OrderJson[];
    readonly firstOrderThatPays: Figure;
    readonly firstOrderThatPaysDirect: Figure;
    readonly fromShelf: {
      readonly invoice: number;
      readonly broker: number;
      readonly promotion: number;
      readonly net: number;
      readonly left: Figure;
      readonly leftOfInvoice: Figure;
    } | null;
    readonly onShelf: Figure;
  }[];
  readonly needs: readonly string[];
  readonly findings: readonly Finding[];
}

export const channelsJson = (
  answer: ProductChannels,
  findings: readonly Finding[],
): ChannelsJson => ({
  product: answer.facts.product.product,
  asOf: isoDate(answer.facts.asOf),
  bottles: answer.bottles,
  cost: answer.cost.full.replacement ?? null,
  direct: answer.cost.direct.replacement ?? null,
  estimateFromSeason: answer.cost.estimateFrom ?? null,
  shelfPrice: answer.shelf ?? null,
  channels: answer.channels.map(channelJson),
  needs: answer.cost.missing,
  findings: [...channelFindings(answer), ...findings],
});

const channelJson = ({
  channel,
  price,
  usual,
  sizes,
  firstPays,
  firstPaysDirect,
  shelf,
  onShelf,
}: ChannelOrders): ChannelsJson["channels"][number] => ({
  channel: channel.channel,
  price: price ?? null,
  goal: channel.goalMargin,
  shippingCharged: channel.shippingCharged ?? null,
  usualOrder: usual
    ? { ...orderJson(usual), leftOfGoods: usual.left / usual.goods }
    : null,
  orders: sizes.map(orderJson),
  firstOrderThatPays: firstPays ?? null,
  firstOrderThatPaysDirect: firstPaysDirect ?? null,
  fromShelf: shelf
    ? {
        invoice: shelf.invoice,
        broker: shelf.broker,
        promotion: shelf.promotion,
        net: shelf.invoice - shelf.broker - shelf.promotion,
        left: shelf.left ?? null,
        leftOfInvoice:
          shelf.left === undefined ? null : shelf.left / shelf.invoice,
      }
    : null,
  onShelf: onShelf ?? null,
});

const orderJson = (order: OrderEarned): OrderJson => ({
  bottles: order.bottles,
  goods: order.goods,
  fees: order.fees,
  marketingAndReturns: order.goodsFees,
  sending: order.sending,
  left: order.left,
});
