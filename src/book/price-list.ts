import { as, type DaySerial, type Money } from "../measures/quantity";
import { bottleCost, type BottleCost } from "../trade/costing/bottle-cost";
import {
  channelPrice,
  type Channel,
  type ChannelPrice,
} from "../trade/pricing/channel-price";
import { type Rung, sizeLadder } from "../trade/pricing/size-ladder";
import type { Book, BookRow } from "./book";
import { bulkPrice } from "./bulk-price";
import { type CostingFacts, costingFacts } from "./costing-facts";
import { isSameName, sameName } from "./keys";
import { newestDay } from "./newest-day";
import { usualRun } from "./usual-run";

/** A product of the price list, costed for its usual run. */
export interface PricedProduct {
  readonly product: BookRow<"products">;
  readonly bottles: number;
  readonly facts: CostingFacts;
  readonly cost: BottleCost;
  readonly channels: readonly PricedChannel[];
}

export interface PricedChannel extends ChannelPrice {
  readonly terms: Channel;
  /** This price among the sizes of the same thing; undefined without a price. */
  readonly rung: Rung | undefined;
}

export interface PriceList {
  readonly asOf: DaySerial;
  readonly bulkPrices: readonly {
    readonly kind: string;
    readonly pricePerPound: Money;
  }[];
  readonly products: readonly PricedProduct[];
}

/** The ending of prices for the goal where nobody typed another. */
const ENDING = as<Money>(0.99);

/** Every product of the book at its usual run, by default on the book's newest day. */
export function priceList(
  book: Book,
  asked: DaySerial | undefined = undefined,
  ending: Money = ENDING,
): PriceList {
  const asOf = asked ?? newestDay(book) ?? as<DaySerial>(0);
  const costed = book.products.map((product) => {
    const bottles = usualRun(book, product.product);
    const facts = costingFacts(book, {
      product: product.product,
      bottles,
      asOf,
    });
    return { product, bottles, facts, cost: bottleCost(facts.bottle) };
  });
  const ladders = laddersOf(costed);
  return {
    asOf,
    bulkPrices: kindsOf(book).flatMap((kind) => {
      const row = bulkPrice(book, kind, asOf);
      return row ? [{ kind, pricePerPound: row.pricePerPound }] : [];
    }),
    products: costed.map((one) => ({
      ...one,
      channels: one.facts.channels.map((terms) => ({
        ...channelPrice(
          terms,
          one.cost.full.replacement,
          one.cost.direct.replacement,
          ending,
        ),
        terms,
        rung: ladders
          .get(ladderKey(one.product, terms.name))
          ?.find(({ name }) => name === one.product.product),
      })),
    })),
  };
}

const kindsOf = (book: Book): readonly string[] => {
  const kinds = new Map<string, string>();
  for (const { syrupKind } of book.bulkPrices)
    if (!kinds.has(sameName(syrupKind)))
      kinds.set(sameName(syrupKind), syrupKind);
  return [...kinds.values()];
};

/** Sizes of one thing: the same family, syrup, organic status and label. */
const ladderKey = (product: BookRow<"products">, channel: string): string =>
  [
    product.family ?? "",
    product.syrupKind,
    product.organic === true ? "yes" : "no",
    product.labelOwner ?? "",
    channel,
  ]
    .map(sameName)
    .join("|");

function laddersOf(
  products: readonly {
    readonly product: BookRow<"products">;
    readonly facts: CostingFacts;
  }[],
): ReadonlyMap<string, readonly Rung[]> {
  const sizes = new Map<string, Parameters<typeof sizeLadder>[0][number][]>();
  for (const { product, facts } of products)
    for (const { name, price } of facts.channels) {
      const key = ladderKey(product, name);
      const held = sizes.get(key) ?? [];
      held.push({ name: product.product, declared: product.declared, price });
      sizes.set(key, held);
    }
  return new Map([...sizes].map(([key, all]) => [key, sizeLadder(all)]));
}

/** The channel a product stands worst in against its goal; undefined without a price anywhere. */
export const worstChannel = ({
  channels,
}: PricedProduct): PricedChannel | undefined =>
  channels.reduce<PricedChannel | undefined>(
    (worst, channel) =>
      channel.kept !== undefined &&
      (worst?.kept === undefined ||
        channel.kept - channel.goal < worst.kept - worst.goal)
        ? channel
        : worst,
    undefined,
  );

/** A product of the list by its code, in any case of letters. */
export const pricedProduct = (
  list: PriceList,
  code: string,
): PricedProduct | undefined =>
  list.products.find(({ product }) => isSameName(product.product, code));
