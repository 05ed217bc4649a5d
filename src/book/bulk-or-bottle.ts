import {
  as,
  type DaySerial,
  type Hours,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../measures/quantity";
import { KG_PER_LB } from "../measures/units";
import { bottleCost } from "../trade/costing/bottle-cost";
import {
  type BottleWay,
  bulkOrBottle,
  type Split,
} from "../trade/pricing/bulk-or-bottle";
import { contributionOf } from "../trade/pricing/quote";
import type { Book } from "./book";
import { costingFacts } from "./costing-facts";
import { isSameName } from "./keys";
import { bestTotePrice, type TotePrice } from "./tote-price";

export interface BulkOrBottleQuestion {
  readonly product: string;
  /** The run a bottle's share of set-up and purge is taken from. */
  readonly bottles: number;
  readonly syrup: Kilograms;
  readonly labour: Hours | undefined;
  /** What a pound brings in bulk, instead of the best open contract's price. */
  readonly totePrice?: Money;
  readonly asOf?: DaySerial;
}

export interface BulkOrBottle {
  readonly contract: TotePrice | undefined;
  readonly bulkPerKg: MoneyPerKg | undefined;
  readonly splits: readonly Split[];
  readonly best: Split | undefined;
  readonly missing: readonly string[];
}

/** What the free syrup earns in each channel's bottles against selling it by the pound; syrup counts at today's price either way. */
export function bulkOrBottleOf(
  book: Book,
  question: BulkOrBottleQuestion,
): BulkOrBottle {
  const { product: code, bottles, asOf: day } = question;
  const { product, asOf, bottle, channels } = costingFacts(book, {
    product: code,
    bottles,
    ...(day === undefined ? {} : { asOf: day }),
  });
  const cost = bottleCost(bottle);
  const contract =
    bottle.brix === undefined
      ? undefined
      : bestTotePrice(book, product.syrupKind, bottle.brix, asOf);
  const tote = question.totePrice ?? contract?.perPound;
  const direct = cost.direct.replacement;
  const line = cost.choice.chosen;
  if (
    tote === undefined ||
    direct === undefined ||
    line === undefined ||
    cost.syrupPerBottle === undefined ||
    bottle.bulkPrice === undefined
  )
    return {
      contract,
      bulkPerKg: undefined,
      splits: [],
      best: undefined,
      missing: [
        ...(tote === undefined
          ? [`what a pound of ${product.syrupKind} brings in bulk`]
          : []),
        ...cost.missing,
      ],
    };
  const people = book.crew
    .filter((c) => isSameName(c.line, line.line.name))
    .reduce((sum, c) => sum + c.people, 0);
  const each = {
    syrup: as<Kilograms>(cost.syrupPerBottle + line.line.purge / bottles),
    labour: as<Hours>((people * line.hours) / bottles),
  };
  const ways: readonly BottleWay[] = channels.flatMap((channel) =>
    channel.price === undefined
      ? []
      : [
          {
            name: channel.name,
            contribution: contributionOf(channel.price, direct, channel),
            ...each,
          },
        ],
  );
  const bulkPerKg = as<MoneyPerKg>(
    (tote * (1 - bulkShares(book))) / KG_PER_LB - bottle.bulkPrice,
  );
  return {
    contract,
    bulkPerKg,
    ...bulkOrBottle(question, { contribution: bulkPerKg }, ways),
    missing: [],
  };
}

/** What is taken from the price of bulk: the shares of the first channel that does not sell by the bottle. */
function bulkShares(book: Book): Share {
  const bulk = book.channels.find((c) => c.bottlesPerOrder === 0);
  return as<Share>(
    (bulk?.feeShare ?? 0) +
      (bulk?.marketing ?? 0) +
      (bulk?.promotionAndReturns ?? 0) +
      (bulk?.broker ?? 0),
  );
}
