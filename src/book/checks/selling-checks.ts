import { as, type Money } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";
import { bestBuy } from "../../trade/costing/breaks";
import { billCarried } from "../../trade/costing/overheads-by-driver";
import type { Book, BookRow } from "../book";
import { bookSeason, overheadsOf } from "../book-days";
import { channelOrders } from "../channel-orders";
import { type Finding, listed } from "../finding";
import { isSameName, sameName } from "../keys";
import { seasonOf } from "../overheads-season";
import type { PricedProduct, PriceList } from "../price-list";
import { figure, gathered } from "./gathered";

/**
 * What only shows once every product is costed: prices below cost, private labels under their goal, orders that would
 * be cheaper one break up, single bottles that lose money, and bills that no bottle carries.
 */
export const sellingChecks = (
  book: Book,
  list: PriceList,
): readonly Finding[] => [
  ...belowCost(book, list),
  ...privateLabels(book, list),
  ...billsOfLots(book),
  ...oneBreakUp(book, list),
  ...singleBottles(book, list),
];

interface Priced {
  readonly place: string;
  readonly one: PricedProduct;
  readonly channel: PricedProduct["channels"][number];
  readonly price: Money;
  readonly kept: number;
}

/** Every price that can be held against its cost, with the row it stands in. */
const pricedIn = (book: Book, list: PriceList): readonly Priced[] =>
  list.products.flatMap((one) =>
    one.channels.flatMap((channel) => {
      const { price, kept } = channel;
      if (price === undefined || kept === undefined) return [];
      const row = priceRow(book, one.product.product, channel.channel, list);
      return [{ place: row?.place ?? "Prices", one, channel, price, kept }];
    }),
  );

function priceRow(
  book: Book,
  product: string,
  channel: string,
  { asOf }: PriceList,
): BookRow<"prices"> | undefined {
  return book.prices
    .filter(
      (row) =>
        isSameName(row.product, product) &&
        isSameName(row.channel, channel) &&
        row.validFrom <= asOf,
    )
    .reduce<BookRow<"prices"> | undefined>(
      (newest, row) =>
        newest && newest.validFrom >= row.validFrom ? newest : row,
      undefined,
    );
}

const code = ({ one }: Priced): string => one.product.product;

function belowCost(book: Book, list: PriceList): readonly Finding[] {
  const losing = pricedIn(book, list).filter(({ kept }) => kept < 0);
  return byChannel(losing, ({ channel }) => channel.channel).flatMap(
    ([channel, rows]) =>
      gathered(rows, {
        column: "Price",
        found: (all) =>
          `sold below cost in ${channel}: ${listed(all.map((row) => `${code(row)} (loses ${cents(-row.kept * row.price)} of ${row.price.toFixed(2)})`))}`,
        meaning:
          "the price does not cover the full cost and what the channel takes",
        todo: "raise the price, or leave the channel with it",
        atStake: sum(rows, (row) => -row.kept * row.price * row.one.bottles),
      }),
  );
}

function privateLabels(book: Book, list: PriceList): readonly Finding[] {
  const under = pricedIn(book, list).filter(
    ({ one, channel, kept }) =>
      channel.underGoal && kept >= 0 && isPrivate(one.product),
  );
  return gathered(under, {
    column: "Price",
    found: (rows) =>
      `private labels under their goal: ${listed(rows.map((row) => `${code(row)} (${percent(row.kept)} of ${percent(row.channel.goal)} is left of ${row.price.toFixed(2)}${row.channel.goalPrice === undefined ? "" : `; ${row.channel.goalPrice.toFixed(2)} meets it`})`))}`,
    meaning: "the next order at this price earns less than planned",
    todo: "quote the next order anew before it is accepted",
    atStake: sum(
      under,
      (row) => (row.channel.goal - row.kept) * row.price * row.one.bottles,
    ),
  });
}

const isPrivate = ({ labelOwner }: BookRow<"products">): boolean =>
  labelOwner !== undefined &&
  sameName(labelOwner) !== "" &&
  sameName(labelOwner) !== "own";

/** A bill by lots is carried by syrup that was bought, and the costing charges no bottle with it. */
function billsOfLots(book: Book): readonly Finding[] {
  const season = bookSeason(book);
  if (season === undefined) return [];
  const whole = seasonOf(book, season);
  const carried = overheadsOf(book, season).map((row) => ({
    ...row,
    ...billCarried(
      {
        item: row.item,
        perYear: row.perYear,
        toBulk: row.shareToBulk ?? as(0),
        driver: row.sharedBy,
      },
      whole,
    ),
  }));
  const open = carried.filter(({ gap }) => gap > 0);
  const lots = carried.filter(({ toLots }) => toLots > 0);
  return [
    ...gathered(open, {
      column: "Shared by",
      found: (rows) =>
        `bills nothing shares out: ${listed(rows.map((row) => `${row.item} (by "${row.sharedBy}", ${figure(row.gap, 2)})`))}`,
      meaning: `what they are shared by sums to nothing in ${season}`,
      todo: "share them by runs, lots, lots and runs, gallons packed or the hours of a line",
      atStake: sum(open, ({ gap }) => gap),
    }),
    ...gathered(lots, {
      column: "Shared by",
      found: (rows) =>
        `bills that stay with the lots bought: ${listed(rows.map((row) => `${row.item} (${figure(row.toLots, 2)})`))}`,
      meaning: "no bottle is charged with this part of them",
      todo: "look at Overheads by driver, and share them by runs if bottles are to carry all",
      atStake: sum(lots, ({ toLots }) => toLots),
    }),
  ];
}

interface CheaperOrder {
  readonly place: string;
  readonly says: string;
  readonly saving: number;
}

function oneBreakUp(book: Book, list: PriceList): readonly Finding[] {
  const cheaper = list.products.flatMap(({ product, bottles, facts, cost }) =>
    cost.materials.flatMap((bought): readonly CheaperOrder[] => {
      if (!bought.buysUp) return [];
      const part = book.parts.find((row) => isSameName(row.part, bought.part));
      const material = facts.bottle.materials.find(
        (row) => row.part === bought.part,
      );
      if (!part || !material) return [];
      const { carton, minimumOrder, breaks } = material;
      const least =
        wholeUp(Math.max(bought.drawn, minimumOrder) / carton) * carton;
      const { buy, saving } = bestBuy(least, breaks, carton);
      return [
        {
          place: part.place,
          says: `${part.part} for ${figure(bottles, 0)} ${product.product} (${figure(buy, 0)} instead of ${figure(least, 0)} saves ${saving.toFixed(2)})`,
          saving,
        },
      ];
    }),
  );
  const first = [...cheaper].sort((a, b) => b.saving - a.saving);
  return gathered(first, {
    column: "Part",
    found: (rows) =>
      `an order is cheaper one break up: ${listed(rows.map(({ says }) => says))}`,
    meaning: "the larger order costs less in all, and leaves some over",
    todo: "order the larger number for the next run",
    atStake: sum(first, ({ saving }) => saving),
  });
}

interface Single {
  readonly place: string;
  readonly channel: string;
  readonly loss: number;
  readonly says: string;
}

function singleBottles(book: Book, list: PriceList): readonly Finding[] {
  const losing = pricedIn(book, list).flatMap((row): readonly Single[] => {
    const channel = book.channels.find((one) =>
      isSameName(one.channel, row.channel.channel),
    );
    if (!channel) return [];
    const { sizes, firstPays } = channelOrders(
      channel,
      row.price,
      row.one.cost,
      undefined,
      { product: code(row), sizes: [1] },
    );
    const left = sizes[0]?.left ?? 0;
    // A price below cost is told of by itself; here it is the order that is too small.
    if (firstPays === undefined || firstPays === 1) return [];
    return [
      {
        place: channel.place,
        channel: channel.channel,
        loss: -left,
        says: `${code(row)} (${cents(-left)}, pays from ${firstPays})`,
      },
    ];
  });
  return byChannel(losing, ({ channel }) => channel).flatMap(
    ([channel, rows]) =>
      gathered(rows, {
        column: "Channel",
        found: (all) =>
          `single bottles lose money in ${channel}: ${listed(all.map(({ says }) => says))}`,
        meaning: "what is taken and sent by the order outweighs one bottle",
        todo: "charge more for shipping, or set a smallest order",
        atStake: sum(rows, ({ loss }) => loss),
      }),
  );
}

function byChannel<R>(
  rows: readonly R[],
  channelOf: (row: R) => string,
): readonly (readonly [channel: string, rows: readonly R[]])[] {
  const all = new Map<string, R[]>();
  for (const row of rows) {
    const held = all.get(channelOf(row)) ?? [];
    held.push(row);
    all.set(channelOf(row), held);
  }
  return [...all];
}

const sum = <R>(rows: readonly R[], of: (row: R) => number): number =>
  rows.reduce((total, row) => total + of(row), 0);
const cents = (amount: number): string => amount.toFixed(2);
const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;
