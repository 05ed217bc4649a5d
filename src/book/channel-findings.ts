import type { ChannelOrders, ProductChannels } from "./channel-orders";
import { type Finding, listed } from "./finding";

/** What a product's channels should make a manager look at: small orders that lose money, and what is not entered. */
export const channelFindings = (
  answer: ProductChannels,
): readonly Finding[] => [
  ...answer.channels.flatMap((one) => loses(answer, one)),
  ...notCharged(answer.channels),
];

function loses(
  { facts }: ProductChannels,
  { channel, firstPays, terms, sizes }: ChannelOrders,
): readonly Finding[] {
  if (!terms || firstPays === 1) return [];
  const single = sizes.find(({ bottles }) => bottles === 1);
  const where = `Prices, ${facts.product.product} in ${channel.channel}`;
  return [
    firstPays === undefined
      ? {
          where,
          found: "no order pays, however large",
          meaning: "a further bottle does not earn its own cost",
          todo: "raise the price or leave the channel",
        }
      : {
          where,
          found: `an order pays from ${firstPays} bottles${single ? `; a single one loses ${(-single.left).toFixed(2)}` : ""}`,
          meaning: "what is taken and sent by the order outweighs a small one",
          todo: `charge more for shipping, or sell it there from ${firstPays} bottles`,
        },
  ];
}

/** A parcel that costs to send and is paid for by nobody the book names. */
function notCharged(channels: readonly ChannelOrders[]): readonly Finding[] {
  const free = channels.filter(
    ({ channel, terms }) =>
      terms !== undefined &&
      terms.shippingFirst > 0 &&
      /shipping/i.test(channel.feeAppliesTo ?? "") &&
      channel.shippingCharged === undefined,
  );
  const first = free[0];
  return first
    ? [
        {
          where: `${first.channel.place}, Shipping charged`,
          found: `blank, so what the buyer pays for shipping is not known: ${listed(free.map(({ channel }) => channel.channel))}`,
          meaning:
            "its orders are worked out as if shipping were free to the buyer",
          todo: "type it, such as 6.95, or 0 where shipping is free to the buyer",
        },
      ]
    : [];
}
