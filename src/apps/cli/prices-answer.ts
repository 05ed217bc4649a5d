import type { Finding } from "../../book/finding";
import { type PricedProduct, type PriceList } from "../../book/price-list";
import { priceListFindings } from "../../book/price-list-findings";
import type { CostMoved } from "../../book/price-list-moves";
import { isoDate } from "../../measures/read-date";
import { LITRES_PER_GALLON } from "../../measures/units";
import type { ByMethod } from "../../trade/costing/by-method";

type Figure = number | null;

interface Methods {
  readonly replacement: Figure;
  readonly average: Figure;
  readonly oldestFirst: Figure;
}

/** The answer of `prices --json`; a withheld figure is null and a finding says what is missing. Money is a bottle. */
export interface PricesAnswer {
  readonly asOf: string;
  /** A pound, by syrup kind. */
  readonly bulkPrices: Readonly<Record<string, number>>;
  /** The closed season that overheads are estimated from; null where they are the season's own. */
  readonly estimateFromSeason: Figure;
  readonly products: readonly ProductPrices[];
  /** Only with another book to compare with. */
  readonly moved?: readonly {
    readonly product: string;
    readonly before: Figure;
    readonly now: Figure;
    readonly share: Figure;
    readonly over: boolean;
  }[];
  readonly findings: readonly Finding[];
}

export interface ProductPrices {
  readonly product: string;
  readonly bottles: number;
  readonly line: string | null;
  readonly cost: Methods;
  readonly direct: Methods;
  readonly needs: readonly string[];
  readonly channels: readonly {
    readonly channel: string;
    readonly price: number;
    readonly margin: Figure;
    readonly markup: Figure;
    readonly goal: number;
    readonly marginAfterChannelCosts: Figure;
    readonly priceForGoal: Figure;
    readonly underGoal: boolean;
    readonly belowCost: boolean;
    readonly perFlOz: Figure;
    readonly perMl: Figure;
    readonly dearerThanSmaller: boolean;
  }[];
}

export const pricesAnswer = (
  list: PriceList,
  findings: readonly Finding[],
  moved?: readonly CostMoved[],
): PricesAnswer => ({
  asOf: isoDate(list.asOf),
  bulkPrices: Object.fromEntries(
    list.bulkPrices.map(({ kind, pricePerPound }) => [kind, pricePerPound]),
  ),
  estimateFromSeason: figure(
    list.products.find(({ cost }) => cost.estimateFrom !== undefined)?.cost
      .estimateFrom,
  ),
  products: list.products.map(productPrices),
  ...(moved
    ? {
        moved: moved.map(({ product, before, now, share, isOver }) => ({
          product,
          before: figure(before),
          now: figure(now),
          share: figure(share),
          over: isOver,
        })),
      }
    : {}),
  findings: [...priceListFindings(list), ...findings],
});

const FL_OZ = LITRES_PER_GALLON / 128;

const productPrices = ({
  product,
  bottles,
  cost,
  channels,
}: PricedProduct): ProductPrices => ({
  product: product.product,
  bottles,
  line: cost.choice.chosen?.line.name ?? null,
  cost: methods(cost.full),
  direct: methods(cost.direct),
  needs: cost.missing,
  channels: channels.flatMap((c) =>
    c.price === undefined
      ? []
      : [
          {
            channel: c.channel,
            price: c.price,
            margin: figure(c.margin),
            markup: figure(c.markup),
            goal: c.goal,
            marginAfterChannelCosts: figure(c.kept),
            priceForGoal: figure(c.goalPrice),
            underGoal: c.underGoal,
            belowCost: c.kept !== undefined && c.kept < 0,
            perFlOz: figure(c.rung && c.rung.unitPrice * FL_OZ),
            perMl: figure(c.rung && c.rung.unitPrice / 1000),
            dearerThanSmaller: c.rung?.isKink === true,
          },
        ],
  ),
});

const methods = (by: ByMethod): Methods => ({
  replacement: figure(by.replacement),
  average: figure(by.average),
  oldestFirst: figure(by.oldestFirst),
});

const figure = (value: number | undefined): Figure => value ?? null;
