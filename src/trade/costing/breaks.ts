import { unanswerable, unusable } from "../../measures/cannot-answer";
import { as, type Money } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";

/** A price each that holds from a quantity on. */
export interface Break {
  readonly from: number;
  readonly price: Money;
}

/**
 * The price each at a quantity: that of the highest break reached. Breaks may come in any order.
 * Below the first break there is no answer (#N/A); two prices from one quantity are refused (#VALUE!).
 */
export function breakPrice(pieces: number, breaks: readonly Break[]): Money {
  const steps = inOrder(breaks);
  const reached = steps.findLast(({ from }) => from <= pieces);
  if (!reached)
    throw unanswerable(
      `minimum order is ${(steps[0]?.from ?? 0).toLocaleString("en-US")}`,
    );
  return reached.price;
}

export interface Buy {
  readonly buy: number;
  readonly price: Money;
  readonly total: Money;
  readonly leftOver: number;
  /** Against buying no more than the need, in whole cartons and not below the minimum order. */
  readonly saving: Money;
}

/** The cheapest order that covers a need: just enough, or up to a higher break where that costs less in total. */
export function bestBuy(
  need: number,
  breaks: readonly Break[],
  carton = 1,
): Buy {
  const steps = inOrder(breaks);
  const cartons = (pieces: number): number => wholeUp(pieces / carton) * carton;
  const order = (buy: number): Omit<Buy, "saving"> => {
    const price = breakPrice(buy, steps);
    return { buy, price, total: as<Money>(buy * price), leftOver: buy - need };
  };
  const enough = order(cartons(Math.max(need, steps[0]?.from ?? 0)));
  const cheapest = steps
    .map(({ from }) => cartons(from))
    .filter((buy) => buy > enough.buy)
    .map(order)
    // A total equal but for binary noise is no saving: the smaller order stands.
    .reduce((a, b) => (b.total < a.total - 1e-9 ? b : a), enough);
  return {
    ...cheapest,
    saving: as<Money>(enough.total - cheapest.total),
  };
}

function inOrder(breaks: readonly Break[]): readonly Break[] {
  if (breaks.length === 0) throw unusable("needs breaks");
  const steps = [...breaks].sort((a, b) => a.from - b.from);
  const twice = steps.find(({ from }, i) => from === steps[i + 1]?.from);
  if (twice) throw unusable(`breaks: two prices from ${twice.from}`);
  return steps;
}
