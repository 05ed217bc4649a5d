import { KG_PER_LB } from "../measures/units";
import { type Finding, listed } from "./finding";
import type { PricedProduct, PriceList } from "./price-list";

/**
 * What a manager should know from the whole list: withheld costs by what is missing, prices below cost, prices under
 * their goal by channel, and kinks in a size ladder. One finding speaks of all products it holds for.
 */
export const priceListFindings = (list: PriceList): readonly Finding[] => [
  ...withheld(list),
  ...shortOfSyrup(list),
  ...belowCost(list),
  ...underGoal(list),
  ...kinks(list),
];

const where = (names: string): string => `Price list, ${names}`;

function withheld({ products }: PriceList): readonly Finding[] {
  const byNeed = gathered(
    products.flatMap(({ product, cost }) =>
      cost.missing.map((need) => [need, product.product] as const),
    ),
  );
  return [...byNeed].map(([need, names]) => ({
    where: where(listed(names)),
    found: `needs ${need}`,
    meaning: "the cost is withheld; a blank is never counted as zero",
    todo: "enter it in the book",
  }));
}

function shortOfSyrup({ products }: PriceList): readonly Finding[] {
  const short = products.filter(
    ({ cost }) =>
      cost.missing.length === 0 &&
      cost.full.replacement !== undefined &&
      cost.full.oldestFirst === undefined,
  );
  return short.map(({ product, bottles, facts }) => {
    const left =
      facts.bottle.lots.reduce((sum, lot) => sum + lot.left, 0) / KG_PER_LB;
    return {
      where: where(product.product),
      found: `only ${Math.round(left).toLocaleString("en-US")} lb of suitable syrup is in stock for its usual run of ${bottles.toLocaleString("en-US")}`,
      meaning: "the average and oldest-first costs are withheld",
      todo: "buy or blend more, or run less",
    };
  });
}

function belowCost({ products }: PriceList): readonly Finding[] {
  return byChannel(products, ({ kept }) => kept !== undefined && kept < 0).map(
    ([channel, names]) => ({
      where: where(`${listed(names)} in ${channel}`),
      found: "sold below cost",
      meaning: "the price does not cover the full cost and the channel's own",
      todo: "raise the price, or leave the channel",
    }),
  );
}

function underGoal({ products }: PriceList): readonly Finding[] {
  return byChannel(
    products,
    ({ kept, underGoal: under }) => under && (kept ?? 0) >= 0,
  ).map(([channel, names, goal]) => ({
    where: where(`${listed(names)} in ${channel}`),
    found: `${names.length} ${names.length === 1 ? "price leaves" : "prices leave"} less than the goal of ${Math.round(goal * 1000) / 10} %`,
    meaning: "full cost and the channel's own costs take more than planned",
    todo: "see the price for the goal in the price list",
  }));
}

function kinks({ products }: PriceList): readonly Finding[] {
  return byChannel(products, ({ rung }) => rung?.isKink === true).map(
    ([channel, names]) => ({
      where: where(`${listed(names)} in ${channel}`),
      found: "dearer an ounce than a smaller size",
      meaning: "a buyer does better with more of the smaller one",
      todo: "mend the ladder: each size up a little cheaper an ounce",
    }),
  );
}

function byChannel(
  products: PriceList["products"],
  holds: (channel: PricedProduct["channels"][number]) => boolean,
): readonly (readonly [
  channel: string,
  products: readonly string[],
  goal: number,
])[] {
  const goals = new Map<string, number>();
  const names = gathered(
    products.flatMap(({ product, channels }) =>
      channels.filter(holds).map((one) => {
        goals.set(one.channel, one.goal);
        return [one.channel, product.product] as const;
      }),
    ),
  );
  return [...names].map(([channel, all]) => [
    channel,
    all,
    goals.get(channel) ?? 0,
  ]);
}

function gathered(
  pairs: readonly (readonly [string, string])[],
): ReadonlyMap<string, readonly string[]> {
  const all = new Map<string, string[]>();
  for (const [key, name] of pairs) {
    const names = all.get(key) ?? [];
    names.push(name);
    all.set(key, names);
  }
  return all;
}
