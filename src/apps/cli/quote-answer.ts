import type { Finding } from "../../book/finding";
import type { Quote, QuoteQuestion } from "../../book/quote";
import { quoteFindings } from "../../book/quote-findings";
import { isoDate } from "../../measures/read-date";
import { type QuoteTier, setUpPerBottle } from "../../trade/pricing/quote";

type Figure = number | null;

/** The answer of `quote --json`; a withheld figure is null and a finding says what is missing. */
export interface QuoteAnswer {
  readonly product: string;
  readonly channel: string;
  readonly goal: number;
  readonly asOf: string;
  readonly goalOn: "full" | "direct";
  readonly leftovers: "charged" | "kept";
  /** The closed season that overheads are estimated from; null where they are the season's own. */
  readonly estimateFromSeason: Figure;
  readonly tiers: readonly TierAnswer[];
  /** Paid once, apart from the bottles. */
  readonly setUpFees: readonly {
    readonly name: string;
    readonly amount: number;
    /** What it would add to a bottle of each quantity if it were not paid apart. */
    readonly perBottle: readonly number[];
  }[];
  readonly validUntil: string;
  readonly findings: readonly Finding[];
}

export interface TierAnswer {
  readonly bottles: number;
  readonly line: string | null;
  /** Full cost: direct cost and overheads. */
  readonly perBottle: Figure;
  readonly directPerBottle: Figure;
  /** For the channel's goal on the cost it is held against. */
  readonly price: Figure;
  readonly priceOnFullCost: Figure;
  readonly priceOnDirectCost: Figure;
  readonly contribution: Figure;
  readonly leftovers: readonly {
    readonly part: string;
    readonly pieces: number;
    readonly value: number;
  }[];
  readonly belowMinimum: readonly {
    readonly part: string;
    readonly needed: number;
    readonly minimum: number;
    readonly priceEach: number;
    readonly ordered: number;
    readonly cost: number;
  }[];
  /** Only with one-time money; null where it is never earned back. */
  readonly breakEven?: {
    readonly bottles: number;
    readonly months: Figure;
  } | null;
}

export const quoteAnswer = (
  quote: Quote,
  { leftovers, goalOn, spent, artworkLife }: QuoteQuestion,
  findings: readonly Finding[],
): QuoteAnswer => ({
  product: quote.product.product,
  channel: quote.channel.name,
  goal: quote.channel.goal,
  asOf: isoDate(quote.asOf),
  goalOn,
  leftovers,
  estimateFromSeason: figure(quote.tiers[0]?.cost.estimateFrom),
  tiers: quote.tiers.map((tier) => tierAnswer(tier, spent !== undefined)),
  setUpFees: quote.setUpFees.map(({ name, amount }) => ({
    name,
    amount,
    perBottle: quote.tiers.map(({ bottles }) =>
      setUpPerBottle(amount, bottles, artworkLife),
    ),
  })),
  validUntil: isoDate(quote.validUntil),
  findings: [...quoteFindings(quote), ...findings],
});

const tierAnswer = (tier: QuoteTier, isSpent: boolean): TierAnswer => ({
  bottles: tier.bottles,
  line: tier.cost.choice.chosen?.line.name ?? null,
  perBottle: figure(tier.full),
  directPerBottle: figure(tier.direct),
  price: figure(tier.price),
  priceOnFullCost: figure(tier.priceOn.full),
  priceOnDirectCost: figure(tier.priceOn.direct),
  contribution: figure(tier.contribution),
  leftovers: tier.leftovers,
  belowMinimum: tier.belowMinimum,
  ...(isSpent
    ? {
        breakEven: tier.breakEven
          ? {
              bottles: tier.breakEven.units,
              months: figure(tier.breakEven.months),
            }
          : null,
      }
    : {}),
});

const figure = (value: number | undefined): Figure => value ?? null;
