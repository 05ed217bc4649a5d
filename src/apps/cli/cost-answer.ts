import type { Book } from "../../book/book";
import { costingFacts } from "../../book/costing-facts";
import type { Finding } from "../../book/finding";
import { as, type Kilograms, type Money } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { bottleCost, type BottleCost } from "../../trade/costing/bottle-cost";
import type { ByMethod } from "../../trade/costing/by-method";
import {
  channelPrice,
  type ChannelPrice,
} from "../../trade/pricing/channel-price";

type Figure = number | null;
interface Methods {
  readonly replacement: Figure;
  readonly average: Figure;
  readonly oldestFirst: Figure;
}

/** The answer of `cost --json`; a withheld figure is null and a finding says what is missing. Money is per bottle unless it says otherwise. */
export interface CostAnswer {
  readonly product: string;
  readonly bottles: number;
  readonly line: {
    readonly name: string;
    readonly ratePerHour: number;
    readonly limitedBy: string;
    readonly crossoverBottles: number | null;
    readonly otherLine: string | null;
  } | null;
  readonly syrup: Methods & { readonly lbPerBottle: Figure };
  readonly parts: readonly {
    readonly name: string;
    readonly perBottle: Figure;
  }[];
  readonly directPerBottle: Methods;
  readonly overheadPerBottle: Figure;
  readonly costPerBottle: Methods;
  /** The closed season its overheads are estimated from; null where they are the season's own. */
  readonly estimateFromSeason: number | null;
  /** At replacement. */
  readonly perCase: Figure;
  readonly prices: readonly {
    readonly channel: string;
    readonly price: Figure;
    readonly margin: Figure;
    readonly goal: number;
    readonly markup: Figure;
    readonly marginAfterChannelCosts: Figure;
    readonly marginOnDirectCost: Figure;
    readonly priceForGoal: Figure;
    readonly underGoal: boolean;
  }[];
  readonly findings: readonly Finding[];
}

/** The ending of prices for the goal where the costing sheet has no other typed in. */
const ENDING = as<Money>(0.99);

export function costAnswer(
  book: Book,
  findings: readonly Finding[],
  product: string,
  bottles: number,
): CostAnswer {
  const facts = costingFacts(book, { product, bottles });
  const cost = bottleCost(facts.bottle);
  const prices = facts.channels.map((channel) =>
    channelPrice(
      channel,
      cost.full.replacement,
      cost.direct.replacement,
      ENDING,
    ),
  );
  const code = facts.product.product;
  return {
    product: code,
    bottles,
    line: lineOf(cost),
    syrup: {
      lbPerBottle: figure(
        cost.syrupPerBottle && cost.syrupPerBottle / KG_PER_LB,
      ),
      ...methods(cost.syrup),
    },
    parts: cost.parts.map(({ name, perBottle }) => ({
      name,
      perBottle: figure(perBottle),
    })),
    directPerBottle: methods(cost.direct),
    overheadPerBottle: figure(cost.overhead),
    costPerBottle: methods(cost.full),
    estimateFromSeason: figure(cost.estimateFrom),
    perCase: figure(cost.perCase.replacement),
    prices: prices.map((p) => ({
      channel: p.channel,
      price: figure(p.price),
      margin: figure(p.margin),
      goal: p.goal,
      markup: figure(p.markup),
      marginAfterChannelCosts: figure(p.kept),
      marginOnDirectCost: figure(p.directMargin),
      priceForGoal: figure(p.goalPrice),
      underGoal: p.underGoal,
    })),
    findings: [
      ...costFindings(code, cost, facts.bottle.lots, prices),
      ...findings,
    ],
  };
}

function lineOf({
  choice: { chosen, options },
}: BottleCost): CostAnswer["line"] {
  if (!chosen) return null;
  const rival = options.find(
    (option) => option.crossover !== undefined && option.line.usual,
  );
  return {
    name: chosen.line.name,
    ratePerHour: chosen.rate,
    limitedBy: chosen.limitedBy,
    crossoverBottles: rival?.crossover ?? null,
    otherLine: rival?.line.name ?? null,
  };
}

/** Where a finding about a product's own costing stands. */
export const costingPlace = (product: string): string =>
  `Costing of ${product}`;

function costFindings(
  product: string,
  cost: BottleCost,
  lots: readonly { readonly left: Kilograms }[],
  prices: readonly ChannelPrice[],
): readonly Finding[] {
  const where = costingPlace(product);
  const missing = cost.missing.map((needs) => ({
    where,
    found: `needs ${needs}`,
    meaning: "the total is withheld; a blank is never counted as zero",
    todo: "enter it in the book and cost the product again",
  }));
  const short =
    missing.length === 0 &&
    cost.full.replacement !== undefined &&
    cost.full.oldestFirst === undefined;
  const left = lots.reduce((sum, lot) => sum + lot.left, 0) / KG_PER_LB;
  const under = prices
    .filter((p) => p.underGoal)
    .map((p) => ({
      where: `Prices, ${product} in ${p.channel}`,
      found: `${percent(p.kept)} of the price is left after cost and the channel's own costs`,
      meaning: `that is under the goal of ${percent(p.goal)}`,
      todo:
        p.goalPrice === undefined
          ? "no price reaches the goal; look at its fees"
          : `${p.goalPrice.toFixed(2)} would meet it`,
    }));
  return [
    ...missing,
    ...(short
      ? [
          {
            where,
            found: `only ${Math.round(left).toLocaleString("en-US")} lb of suitable syrup is in stock`,
            meaning:
              "what was paid for the whole run's syrup is not known, so the average and oldest-first costs are withheld",
            todo: "buy or blend more, or cost a smaller run",
          },
        ]
      : []),
    ...under,
  ];
}

const methods = (by: ByMethod): Methods => ({
  replacement: figure(by.replacement),
  average: figure(by.average),
  oldestFirst: figure(by.oldestFirst),
});

const figure = (value: number | undefined): Figure => value ?? null;
const percent = (share: number | undefined): string =>
  `${((share ?? 0) * 100).toFixed(1)} %`;
