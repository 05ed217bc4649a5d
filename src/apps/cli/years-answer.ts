import type { Finding } from "../../book/finding";
import type { Book } from "../../book/book";
import { valuingChannel } from "../../book/overheads-season";
import {
  type CustomerEarned,
  customersEarned,
  type ProductEarned,
  productsEarned,
} from "../../book/profitability";
import type { YearBridge, Years } from "../../book/year-bridge";
import type { YearCost } from "../../book/year-cost";
import { KG_PER_LB } from "../../measures/units";

type Figure = number | null;

interface SeasonJson {
  readonly runs: readonly string[];
  readonly bottles: number;
  readonly cost: Figure;
  readonly syrupPerLb: Figure;
  readonly lbInBottle: Figure;
  readonly lbDrawn: Figure;
}

/** The answer of `years --json`; money is a bottle, as it was made. */
export interface YearsJson {
  readonly season: number;
  readonly against: number;
  readonly products: readonly {
    readonly product: string;
    readonly before: SeasonJson;
    readonly after: SeasonJson;
    readonly steps: readonly {
      readonly name: string;
      readonly change: number;
    }[];
    readonly change: Figure;
    readonly needs: readonly string[];
  }[];
  /** Of the season: what each customer's totes left, and each product's bottles at one channel's price. */
  readonly customers: readonly CustomerEarned[];
  readonly earned: {
    readonly channel: string;
    readonly products: readonly ProductEarned[];
  };
  readonly findings: readonly Finding[];
}

export const yearsJson = (
  book: Book,
  years: Years,
  findings: readonly Finding[],
): YearsJson => ({
  season: years.season,
  against: years.against,
  products: years.products.map(productJson),
  customers: customersEarned(book, years.season),
  earned: {
    channel: valuingChannel(book),
    products: productsEarned(book, years.season),
  },
  findings: [...billsFinding(years), ...findings],
});

const productJson = ({
  product,
  before,
  after,
  bridge,
  missing,
}: YearBridge): YearsJson["products"][number] => ({
  product,
  before: seasonJson(before, bridge?.before),
  after: seasonJson(after, bridge?.after),
  steps: bridge?.steps ?? [],
  change: bridge ? bridge.after - bridge.before : null,
  needs: missing,
});

const seasonJson = (
  { runs, bottles, cost }: YearCost,
  total: number | undefined,
): SeasonJson => ({
  runs,
  bottles,
  cost: total ?? null,
  syrupPerLb: cost ? cost.syrupPrice * KG_PER_LB : null,
  lbInBottle: cost ? cost.filled / KG_PER_LB : null,
  lbDrawn: cost ? cost.drawn / KG_PER_LB : null,
});

/** Half of the bills or fewer in one season: the overheads step tells of the book, not of the farm. */
function billsFinding({
  bills: { before, after },
  season,
  against,
}: Years): readonly Finding[] {
  if (2 * Math.min(before, after) > Math.max(before, after)) return [];
  return [
    {
      where: "table Overheads",
      found: `${before} bills for ${against} and ${after} for ${season}`,
      meaning:
        "a bill that one season lacks is a step of its own, and says nothing of what the farm spent",
      todo: `enter the bills of ${before < after ? against : season}`,
    },
  ];
}
