import { answerOrNone } from "../../measures/cannot-answer";
import { roundHalfUp } from "../../measures/money";
import { as, type Money } from "../../measures/quantity";
import {
  bottleCost,
  type BottleCost,
  type BottleFacts,
} from "../costing/bottle-cost";
import {
  type BelowMinimum,
  belowMinimum,
  type Leftover,
  leftover,
} from "../costing/leftovers";
import {
  type BreakEven,
  breakEvenNew,
  type NewProduct,
} from "./break-even-new";
import type { Channel } from "./channel-price";
import { priceForMargin } from "./margin";

/** Whether the customer pays for what is left of parts bought for the run, or we keep it as stock. */
export const leftoverTerms = ["charged", "kept"] as const;
export type LeftoverTerms = (typeof leftoverTerms)[number];

/** The cost a channel's goal is held against: with the season's overheads, or without. */
export const goalCosts = ["full", "direct"] as const;
export type GoalCost = (typeof goalCosts)[number];

export interface QuoteTerms {
  readonly channel: Channel;
  readonly goalOn: GoalCost;
  readonly leftovers: LeftoverTerms;
  /** Money of our own that the customer does not pay apart, and what is expected; undefined where nobody said. */
  readonly spent: Omit<NewProduct, "contribution"> | undefined;
}

/** One quantity of a quote. What is undefined is withheld; `cost.missing` says for what. */
export interface QuoteTier {
  readonly bottles: number;
  readonly cost: BottleCost;
  readonly leftovers: readonly Leftover[];
  readonly belowMinimum: readonly BelowMinimum[];
  /** A bottle on direct cost, as the leftovers are agreed. */
  readonly direct: Money | undefined;
  /** The same with its share of the overheads. */
  readonly full: Money | undefined;
  /** The price that leaves the channel's goal on the cost agreed, to the nearest cent. */
  readonly price: Money | undefined;
  /** The same on the full and on the direct cost. */
  readonly priceOn: Readonly<Record<GoalCost, Money | undefined>>;
  /** What a bottle earns over its direct cost after the channel's shares and fees. */
  readonly contribution: Money | undefined;
  /** When our own one-time money is earned back; undefined where never, or nothing is spent. */
  readonly breakEven: BreakEven | undefined;
}

/** What a run of one size costs and what to ask for it. */
export function quoteTier(facts: BottleFacts, terms: QuoteTerms): QuoteTier {
  const { bottles } = facts;
  const cost = bottleCost(facts);
  const leftovers = facts.materials.flatMap((m) => leftover(m) ?? []);
  const kept =
    terms.leftovers === "kept"
      ? leftovers.reduce((sum, { value }) => sum + value, 0)
      : 0;
  const less = (amount: Money | undefined): Money | undefined =>
    amount === undefined ? undefined : as<Money>(amount - kept / bottles);
  const direct = less(cost.direct.replacement);
  const full = less(cost.full.replacement);
  const priceOn = {
    full: quotedPrice(full, terms.channel),
    direct: quotedPrice(direct, terms.channel),
  };
  const price = priceOn[terms.goalOn];
  const contribution =
    price === undefined || direct === undefined
      ? undefined
      : contributionOf(price, direct, terms.channel);
  return {
    bottles,
    cost,
    leftovers,
    belowMinimum: facts.materials.flatMap((m) => belowMinimum(m) ?? []),
    direct,
    full,
    price,
    priceOn,
    contribution,
    breakEven: answerOrNone(() =>
      terms.spent === undefined || contribution === undefined
        ? undefined
        : breakEvenNew({ ...terms.spent, contribution }),
    ),
  };
}

/** What is left of a price after the channel's shares and fees and the cost of the bottle. */
export const contributionOf = (
  price: Money,
  cost: Money,
  { shares, fixedPerBottle }: Pick<Channel, "shares" | "fixedPerBottle">,
): Money => as<Money>(price * (1 - shares) - fixedPerBottle - cost);

/** A quote is for one customer: to the cent, not to an ending of the shelf. */
const quotedPrice = (
  cost: Money | undefined,
  { goal, shares, fixedPerBottle }: Channel,
): Money | undefined =>
  cost === undefined
    ? undefined
    : answerOrNone(() =>
        as<Money>(
          roundHalfUp(
            priceForMargin({
              cost,
              margin: goal,
              feeShare: shares,
              fixedFee: fixedPerBottle,
            }),
            2,
          ),
        ),
      );

/** Artwork, plates and dies shared by the bottles they last for; where nobody knows, by this run alone. */
export const setUpPerBottle = (
  amount: Money,
  bottles: number,
  life: number | undefined,
): Money => as<Money>(amount / (life ?? bottles));
