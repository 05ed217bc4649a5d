import { answerOrNone } from "../../measures/cannot-answer";
import { as, type Money, type Share } from "../../measures/quantity";
import { margin, markup, priceForMargin } from "./margin";
import { roundPrice } from "./round-price";

/** What a channel asks for and takes. */
export interface Channel {
  readonly name: string;
  readonly goal: Share;
  /** Fees, marketing, promotion, returns and broker, as one share of the price. */
  readonly shares: Share;
  readonly fixedPerBottle: Money;
  readonly price: Money | undefined;
}

export interface ChannelPrice {
  readonly channel: string;
  readonly price: Money | undefined;
  /** On the price, before the channel's own costs. */
  readonly margin: Share | undefined;
  /** On the cost. */
  readonly markup: Share | undefined;
  readonly goal: Share;
  /** On the price, after fees, marketing, returns and broker: what the goal is held against. */
  readonly kept: Share | undefined;
  readonly directMargin: Share | undefined;
  readonly goalPrice: Money | undefined;
  readonly underGoal: boolean;
}

/** A channel's price against its goal, on the full cost of a bottle. */
export function channelPrice(
  channel: Channel,
  full: Money | undefined,
  direct: Money | undefined,
  ending: Money,
): ChannelPrice {
  const { name, goal, shares, fixedPerBottle, price } = channel;
  const known = price !== undefined && full !== undefined;
  const kept = known
    ? as<Share>(1 - shares - (full + fixedPerBottle) / price)
    : undefined;
  return {
    channel: name,
    price,
    margin: known ? margin(price, full) : undefined,
    markup: known ? markup(price, full) : undefined,
    goal,
    kept,
    directMargin:
      price !== undefined && direct !== undefined
        ? margin(price, direct)
        : undefined,
    goalPrice:
      full === undefined ? undefined : goalPrice(channel, full, ending),
    // The same guard as on the sheet: binary noise must not fail a price that meets its goal to the cent.
    underGoal: kept !== undefined && kept < goal - 1e-8,
  };
}

function goalPrice(
  { goal, shares, fixedPerBottle }: Channel,
  full: Money,
  ending: Money,
): Money | undefined {
  return answerOrNone(() =>
    roundPrice(
      priceForMargin({
        cost: full,
        margin: goal,
        feeShare: shares,
        fixedFee: fixedPerBottle,
      }),
      ending,
      "up",
    ),
  );
}
