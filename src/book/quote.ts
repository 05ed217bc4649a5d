import { unusable } from "../measures/cannot-answer";
import { as, type DaySerial, type Money } from "../measures/quantity";
import type { BottleFacts } from "../trade/costing/bottle-cost";
import type { NewProduct } from "../trade/pricing/break-even-new";
import type { Channel } from "../trade/pricing/channel-price";
import {
  type GoalCost,
  type LeftoverTerms,
  type QuoteTier,
  quoteTier,
} from "../trade/pricing/quote";
import type { Book, BookRow } from "./book";
import { costingFacts } from "./costing-facts";
import { isSameName } from "./keys";

/** Days a quote stands where nobody says otherwise. Common practice, no source. */
export const VALID_DAYS = 30;

export interface QuoteQuestion {
  readonly product: string;
  readonly quantities: readonly number[];
  readonly leftovers: LeftoverTerms;
  readonly goalOn: GoalCost;
  /** A channel by name instead of the one the product is sold through in the largest orders. */
  readonly channel?: string;
  readonly asOf?: DaySerial;
  readonly validDays?: number;
  /** Artwork, plates and dies, paid by the customer apart from the bottles; undefined where nobody said. */
  readonly artwork?: Money;
  /** Bottles the artwork will last for; undefined: this run only. */
  readonly artworkLife?: number;
  /** One-time money of our own, and what is expected of the product. */
  readonly spent?: Omit<NewProduct, "contribution">;
}

export interface Quote {
  readonly product: BookRow<"products">;
  readonly channel: Channel;
  readonly paymentDays: number | undefined;
  readonly asOf: DaySerial;
  readonly validUntil: DaySerial;
  readonly setUpFees: readonly {
    readonly name: string;
    readonly amount: Money;
  }[];
  readonly tiers: readonly QuoteTier[];
  readonly lots: BottleFacts["lots"];
}

export const ARTWORK = "Artwork and plates";

/** A quote from the book. Refuses (#VALUE!) a product or channel it does not have, and a quantity twice. */
export function quoteOf(book: Book, question: QuoteQuestion): Quote {
  const { product: code, quantities, leftovers, goalOn, artwork } = question;
  const [first] = quantities;
  if (first === undefined) throw unusable("A quote needs a quantity");
  const twice = quantities.find((n, i) => quantities.indexOf(n) !== i);
  if (twice !== undefined)
    throw unusable(
      `The quantity ${twice.toLocaleString("en-US")} stands twice`,
    );
  const facts = quantities.map((bottles) =>
    costingFacts(book, {
      product: code,
      bottles,
      ...(question.asOf === undefined ? {} : { asOf: question.asOf }),
    }),
  );
  const [one] = facts;
  if (one === undefined) throw unusable("A quote needs a quantity");
  const channel = channelOf(book, one.channels, question.channel);
  const terms = book.channels.find((c) => isSameName(c.channel, channel.name));
  return {
    product: one.product,
    channel,
    paymentDays: terms?.paymentDays,
    asOf: one.asOf,
    validUntil: as<DaySerial>(one.asOf + (question.validDays ?? VALID_DAYS)),
    setUpFees:
      artwork === undefined ? [] : [{ name: ARTWORK, amount: artwork }],
    tiers: facts.map(({ bottle }) =>
      quoteTier(bottle, { channel, leftovers, goalOn, spent: question.spent }),
    ),
    lots: one.bottle.lots,
  };
}

function channelOf(
  book: Book,
  channels: readonly Channel[],
  asked: string | undefined,
): Channel {
  const name = asked ?? usualChannel(book, channels);
  const found = channels.find(
    (c) => name !== undefined && isSameName(c.name, name),
  );
  if (found) return found;
  throw unusable(
    name === undefined
      ? "Channels has no channel that sells by the bottle"
      : `There is no channel "${name}" that sells by the bottle; the book has ${channels.map((c) => c.name).join(", ")}`,
  );
}

/** The channel of the largest usual order, of those the product has a price in, if it has any. */
function usualChannel(
  book: Book,
  channels: readonly Channel[],
): string | undefined {
  const priced = channels.filter(({ price }) => price !== undefined);
  const offered = priced.length > 0 ? priced : channels;
  return book.channels
    .filter(({ channel }) => offered.some(({ name }) => name === channel))
    .reduce<BookRow<"channels"> | undefined>(
      (largest, c) =>
        largest && largest.bottlesPerOrder >= c.bottlesPerOrder ? largest : c,
      undefined,
    )?.channel;
}
