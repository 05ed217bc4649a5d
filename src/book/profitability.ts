import { as, type Money, type Share } from "../measures/quantity";
import { calendarOf, isoDate } from "../measures/read-date";
import { KG_PER_LB } from "../measures/units";
import { seasonCostTotal } from "../trade/costing/cost-bridge";
import type { Book, BookRow } from "./book";
import { booksMoney, worthIn } from "./exchange-rate";
import { isSameName, sameName } from "./keys";
import { newestDay } from "./newest-day";
import { valuedAt, valuingChannel } from "./overheads-season";
import { paidFor, yearCost } from "./year-cost";

/** What a season's totes of one customer in one money have earned. */
export interface CustomerEarned {
  readonly customer: string;
  readonly currency: string;
  readonly totes: number;
  readonly pounds: number;
  /** In the customer's money. */
  readonly sold: Money;
  /** The same in the books' money, each tote at the rate of the day it left; undefined where one has no rate. */
  readonly inBooksMoney: Money | undefined;
  /** What the syrup in them had cost landed, in the books' money; undefined where a lot's cost is not known. */
  readonly syrup: Money | undefined;
  readonly left: Money | undefined;
  readonly leftShare: Share | undefined;
  /** Tickets whose syrup has no cost, and those that left on a day without a rate. */
  readonly missing: readonly string[];
}

/** Customers of a season's totes, the one that leaves most first; those without a cost last. */
export function customersEarned(
  book: Book,
  season: number,
): readonly CustomerEarned[] {
  const groups = new Map<string, BookRow<"toteShipments">[]>();
  for (const tote of book.toteShipments) {
    if (calendarOf(tote.shipped).year !== season || tote.amount === undefined)
      continue;
    const key = `${sameName(tote.customer ?? "")}|${tote.currency ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), tote]);
  }
  return [...groups.values()]
    .map((totes) => earnedOf(book, totes))
    .sort((a, b) => (b.left ?? -Infinity) - (a.left ?? -Infinity) || 0);
}

function earnedOf(
  book: Book,
  totes: readonly BookRow<"toteShipments">[],
): CustomerEarned {
  const [first] = totes;
  const currency = first?.currency ?? booksMoney(book);
  const sold = sum(totes.map(({ amount }) => amount ?? 0));
  const costs = totes.map((tote) => ({ tote, cost: syrupIn(book, tote) }));
  const missing = costs.flatMap(({ tote, cost }) =>
    cost === undefined ? [tote.ticket] : [],
  );
  const syrup =
    missing.length > 0
      ? undefined
      : as<Money>(sum(costs.map(({ cost }) => cost ?? 0)));
  const worth = worthIn(book);
  const amounts = totes.map((tote) => {
    const each = worth(currency, tote.shipped);
    return each === undefined ? undefined : (tote.amount ?? 0) * each;
  });
  const unpriced = totes.filter((_, i) => amounts[i] === undefined);
  const converted =
    unpriced.length > 0
      ? undefined
      : as<Money>(sum(amounts.map((amount) => amount ?? 0)));
  const left =
    converted === undefined || syrup === undefined
      ? undefined
      : as<Money>(converted - syrup);
  return {
    customer: first?.customer ?? "",
    currency,
    totes: totes.length,
    pounds: sum(totes.map(({ net }) => net)) / KG_PER_LB,
    sold: as<Money>(sold),
    inBooksMoney: converted,
    syrup,
    left,
    leftShare:
      left === undefined || converted === undefined || converted <= 0
        ? undefined
        : as<Share>(left / converted),
    missing: [
      ...missing,
      ...unpriced.map(
        ({ ticket, shipped }) => `${ticket}: a rate on ${isoDate(shipped)}`,
      ),
    ],
  };
}

function syrupIn(
  book: Book,
  { ticket }: BookRow<"toteShipments">,
): number | undefined {
  const draws = book.lotUse.filter(
    ({ to }) => to !== undefined && isSameName(to, ticket),
  );
  return draws.length === 0
    ? undefined
    : draws.reduce<number | undefined>((total, { from, pounds }) => {
        const price = paidFor(book, from);
        return total === undefined || price === undefined
          ? undefined
          : total + pounds * price;
      }, 0);
}

/** What a product's bottles of a season leave if they all sell in one channel at its price. */
export interface ProductEarned {
  readonly product: string;
  readonly bottles: number;
  readonly price: Money | undefined;
  /** A bottle, as it was made. */
  readonly cost: Money | undefined;
  readonly left: Money | undefined;
  readonly missing: readonly string[];
}

/** Products run in a season, the one that leaves most first; those without a cost or a price last. */
export function productsEarned(
  book: Book,
  season: number,
  channel: string = valuingChannel(book),
): readonly ProductEarned[] {
  const day = newestDay(book);
  const terms = book.channels.find((row) => isSameName(row.channel, channel));
  const shares =
    (terms?.feeShare ?? 0) +
    (terms?.marketing ?? 0) +
    (terms?.promotionAndReturns ?? 0) +
    (terms?.broker ?? 0);
  return book.products
    .flatMap((product): readonly ProductEarned[] => {
      const made = yearCost(book, product, season, season);
      if (made.bottles === 0) return [];
      const price =
        day === undefined
          ? undefined
          : valuedAt(book, product.product, channel, day);
      const cost = made.cost && seasonCostTotal(made.cost);
      return [
        {
          product: product.product,
          bottles: made.bottles,
          price,
          cost,
          left:
            price === undefined || cost === undefined
              ? undefined
              : as<Money>(made.bottles * (price * (1 - shares) - cost)),
          missing: [
            ...made.missing,
            ...(price === undefined ? [`a price of ${product.product}`] : []),
          ],
        },
      ];
    })
    .sort((a, b) => (b.left ?? -Infinity) - (a.left ?? -Infinity) || 0);
}

const sum = (amounts: readonly number[]): number =>
  amounts.reduce((total, amount) => total + amount, 0);
