import type { ColdLitres, Money } from "../../measures/quantity";

/** A size of one thing, with its price in one channel. */
export interface Size {
  readonly name: string;
  readonly declared: ColdLitres;
  readonly price: Money | undefined;
}

/** A size against the next smaller one that has a price. */
export interface Rung {
  readonly name: string;
  readonly declared: ColdLitres;
  /** A litre. */
  readonly unitPrice: number;
  /** A litre of the next smaller size; of several of one size, their average. */
  readonly smaller: number | undefined;
  /** By which share a litre is cheaper than in the next smaller size; below zero, dearer. */
  readonly step: number | undefined;
  /** Dearer a litre than the smaller size: a shopper does better with two small ones. */
  readonly isKink: boolean;
}

/** A thousandth of a cent a fluid ounce is rounding, not a kink; 29.5735 mL to the ounce. */
const ROUNDING = 0.00001 / 0.0295735295625;

/** Unit prices from the smallest size up; a size without a price is skipped. */
export function sizeLadder(sizes: readonly Size[]): readonly Rung[] {
  const priced = sizes
    .flatMap(({ price, ...size }) =>
      price === undefined || size.declared <= 0
        ? []
        : [{ ...size, unitPrice: price / size.declared }],
    )
    .sort((a, b) => a.declared - b.declared);
  return priced.map((size) => {
    const below = Math.max(
      0,
      ...priced
        .filter(({ declared }) => declared < size.declared)
        .map(({ declared }) => declared),
    );
    const twins = priced.filter(({ declared }) => declared === below);
    const smaller =
      twins.length === 0
        ? undefined
        : twins.reduce((sum, { unitPrice }) => sum + unitPrice, 0) /
          twins.length;
    return {
      ...size,
      smaller,
      step: smaller === undefined ? undefined : 1 - size.unitPrice / smaller,
      isKink: smaller !== undefined && size.unitPrice > smaller + ROUNDING,
    };
  });
}
