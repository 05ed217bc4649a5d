import { unusable } from "../../measures/cannot-answer";
import { listed } from "../finding";
import { sameName } from "../keys";
import type { Balance } from "./balances";

/** A closing figure beside the opening one that follows it. */
export interface CarriedBalance extends Omit<Balance, "amount"> {
  readonly closing: number;
  readonly opening: number;
}

/** Balances are kept to a millionth of a pound; what is less than ten of them apart is the rounding of two sums. */
const SAME = 1e-5;

/** Sets closing and opening figures side by side; what only one book has stands against 0. */
export function carriedBalances(
  closing: readonly Balance[],
  opening: readonly Balance[],
): readonly CarriedBalance[] {
  const key = ({ what, name, unit }: Balance): string =>
    [what, name, unit].map(sameName).join("\u0000");
  const opened = new Map(opening.map((one) => [key(one), one.amount]));
  const closed = new Set(closing.map(key));
  return [
    ...closing.map(({ amount, ...one }) => ({
      ...one,
      closing: amount,
      opening: opened.get(key({ ...one, amount })) ?? 0,
    })),
    ...opening
      .filter((one) => !closed.has(key(one)))
      .map(({ amount, ...one }) => ({ ...one, closing: 0, opening: amount })),
  ];
}

/** Refuses (#VALUE!) a new book that does not open with what the old one closed with, and names what differs. */
export function requireSame(balances: readonly CarriedBalance[]): void {
  const off = balances.filter(
    ({ closing, opening }) => !(Math.abs(closing - opening) <= SAME),
  );
  if (off.length === 0) return;
  throw unusable(
    `The new book would not open with what the old one closes with: ${listed(off.map(differenceText))}. Nothing was written.`,
  );
}

const differenceText = ({
  what,
  name,
  unit,
  closing,
  opening,
}: CarriedBalance): string =>
  `${what} ${name}, closing ${figure(closing)} ${unit} and opening ${figure(opening)} ${unit}`;

const figure = (amount: number): string =>
  amount.toLocaleString("en-US", { maximumFractionDigits: 6 });
