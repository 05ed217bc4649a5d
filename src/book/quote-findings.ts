import { KG_PER_LB } from "../measures/units";
import { isoDate } from "../measures/read-date";
import type { Finding } from "./finding";
import { listed } from "./finding";
import type { Quote } from "./quote";

/** What a person should look at before a quote goes out. */
export function quoteFindings(quote: Quote): readonly Finding[] {
  const where = `Quote for ${quote.product.product}`;
  return [
    ...withheld(quote, where),
    ...belowMinimum(quote, where),
    ...shortStock(quote, where),
    ...underOurPrice(quote),
    ...noPrice(quote, where),
    ...neverEarned(quote, where),
  ];
}

function withheld({ tiers }: Quote, where: string): readonly Finding[] {
  return [...new Set(tiers.flatMap(({ cost }) => cost.missing))].map(
    (needs) => ({
      where,
      found: `needs ${needs}`,
      meaning: "its prices are withheld; a blank is never counted as zero",
      todo: "enter it in the book and quote again",
    }),
  );
}

/** One finding a quantity: the parts of which less is needed than can be ordered. */
function belowMinimum({ tiers }: Quote, where: string): readonly Finding[] {
  return tiers.flatMap(({ bottles, belowMinimum: parts }) =>
    parts.length === 0
      ? []
      : [
          {
            where: `${where}, ${count(bottles)} bottles`,
            found: listed(
              parts.map(
                ({ part, needed, minimum, priceEach }) =>
                  `${part}: ${count(needed)} needed, the least order is ${count(minimum)} at ${priceEach} each, ${money(minimum * priceEach)}`,
              ),
            ),
            meaning: "the price carries the whole order",
            todo: "offer a larger quantity, or agree who owns what is left over",
          },
        ],
  );
}

function shortStock({ tiers, lots }: Quote, where: string): readonly Finding[] {
  const left = lots.reduce((sum, lot) => sum + lot.left, 0);
  const short = tiers.filter(
    ({ cost, bottles }) =>
      cost.full.replacement !== undefined &&
      (cost.syrupPerBottle ?? 0) * bottles +
        (cost.choice.chosen?.line.purge ?? 0) >
        left,
  );
  return short.length === 0
    ? []
    : [
        {
          where,
          found: `${count(Math.floor(left / KG_PER_LB))} lb of suitable syrup is in stock`,
          meaning: `it does not cover ${listed(short.map(({ bottles }) => count(bottles)))} bottles`,
          todo: "buy before you promise a date; the price stands on today's bulk price",
        },
      ];
}

function underOurPrice({ product, channel, tiers }: Quote): readonly Finding[] {
  const { price: inBook } = channel;
  if (inBook === undefined) return [];
  const dearer = tiers.filter(
    ({ price }) => price !== undefined && price > inBook,
  );
  return dearer.length === 0
    ? []
    : [
        {
          where: `Prices, ${product.product} in ${channel.name}`,
          found: `the price in the book is ${money(inBook)}`,
          meaning: `the goal needs ${listed(dearer.map(({ bottles, price }) => `${money(price ?? 0)} at ${count(bottles)}`))} bottles`,
          todo: "quote the new price, or say why the old one stands",
        },
      ];
}

function noPrice({ channel, tiers }: Quote, where: string): readonly Finding[] {
  return tiers.some(
    ({ full, price }) => full !== undefined && price === undefined,
  )
    ? [
        {
          where,
          found: `the goal and the shares of ${channel.name} take the whole price`,
          meaning: "no price works",
          todo: "look at the channel's goal and fees",
        },
      ]
    : [];
}

function neverEarned(
  { tiers, asOf }: Quote,
  where: string,
): readonly Finding[] {
  return tiers
    .filter(
      ({ contribution, price }) =>
        price !== undefined && contribution !== undefined && contribution <= 0,
    )
    .map(({ bottles }) => ({
      where: `${where}, ${count(bottles)} bottles`,
      found: `on ${isoDate(asOf)} a bottle earns nothing over its direct cost`,
      meaning: "one-time money is never earned back",
      todo: "do not offer this quantity at this goal",
    }));
}

const count = (value: number): string => value.toLocaleString("en-US");
const money = (value: number): string => value.toFixed(2);
