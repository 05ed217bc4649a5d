import { unusable } from "../measures/cannot-answer";
import type { DaySerial } from "../measures/quantity";
import { calendarOf } from "../measures/read-date";
import { costBridge, type CostBridge } from "../trade/costing/cost-bridge";
import type { Book } from "./book";
import { overheadsOf } from "./book-days";
import { isSameName } from "./keys";
import { newestDay } from "./newest-day";
import { type YearCost, yearCost } from "./year-cost";

/** A product's cost in two seasons and the way between; without the way, `missing` says what it needs. */
export interface YearBridge {
  readonly product: string;
  readonly before: YearCost;
  readonly after: YearCost;
  readonly bridge: CostBridge | undefined;
  readonly missing: readonly string[];
}

export interface YearsQuestion {
  readonly product?: string;
  readonly asOf?: DaySerial;
  /** By default the season of the day and the one before it. */
  readonly season?: number;
  readonly against?: number;
}

export interface Years {
  readonly season: number;
  readonly against: number;
  readonly products: readonly YearBridge[];
  /** Bills the book has for each; few against many says more about the book than about cost. */
  readonly bills: { readonly before: number; readonly after: number };
}

/** Every product's, or one product's, cost from season to season. Refuses (#VALUE!) a product the book does not have. */
export function yearsOf(book: Book, question: YearsQuestion = {}): Years {
  const day = question.asOf ?? newestDay(book);
  const season =
    question.season ?? (day === undefined ? 0 : calendarOf(day).year);
  const against = question.against ?? season - 1;
  if (season === against)
    throw unusable(`against: ${against} is the season itself`);
  const { product: code } = question;
  const products = book.products.filter(
    ({ product }) => code === undefined || isSameName(product, code),
  );
  if (code !== undefined && products.length === 0)
    throw unusable(
      `There is no product "${code}"; the book has ${book.products.map((p) => p.product).join(", ")}`,
    );
  return {
    season,
    against,
    bills: {
      before: overheadsOf(book, against).length,
      after: overheadsOf(book, season).length,
    },
    products: products.map((product) => {
      const before = yearCost(book, product, against, season);
      const after = yearCost(book, product, season, against);
      return {
        product: product.product,
        before,
        after,
        bridge:
          before.cost && after.cost
            ? costBridge(before.cost, after.cost)
            : undefined,
        missing: [...new Set([...before.missing, ...after.missing])],
      };
    }),
  };
}
