import { readCell } from "../../../functions/read-cell";
import { unusable } from "../../../measures/cannot-answer";
import { money, number } from "../../../terms/term";
import { readBottles } from "../price/bottles";

/** Quantities that stand side by side on one page. */
const MOST = 6;

const amountTerm = money({
  label: "Amount",
  about: "an amount of money",
  unit: "money",
  min: 0,
  max: 10_000_000,
  example: "240",
});
const bottlesTerm = number({
  label: "Bottles a year",
  about: "bottles expected to sell in a year",
  unit: "bottles",
  min: 1,
  max: 10_000_000,
  whole: true,
  example: "2,400",
});
const poundsTerm = number({
  label: "Syrup that is free",
  about: "pounds of syrup that nothing else needs",
  unit: "lb",
  min: 0,
  max: 10_000_000,
  example: "5,000",
});
const hoursTerm = number({
  label: "Labour",
  about: "hours of people there are for it",
  unit: "h",
  min: 0,
  max: 1_000_000,
  example: "60",
});
const perPoundTerm = money({
  label: "Price a pound",
  about: "what a pound brings in bulk",
  unit: "per lb",
  above: 0,
  max: 100,
  example: "3.08",
});

/** "300; 600; 1,200", or with commas where a comma cannot be a thousand's. */
export function readQuantities(typed: string): readonly number[] {
  const all = typed
    .split(/[;\s]+/)
    .flatMap(apart)
    .filter(Boolean)
    .map(readBottles);
  if (all.length === 0) throw unusable("Type one to six quantities.");
  if (all.length > MOST)
    throw unusable(`At most ${MOST} quantities fit on one page.`);
  const twice = all.find((n, i) => all.indexOf(n) !== i);
  if (twice !== undefined)
    throw unusable(`${twice.toLocaleString("en-US")} stands twice.`);
  return all;
}

/** The quantities between two semicolons. Refuses what could be one large quantity or two small ones. */
function apart(written: string): readonly string[] {
  const chunk = written.replace(/,+$/, "");
  if (/^\d{1,2}(,\d{3})+$/.test(chunk)) return [chunk];
  if (/^\d{3}(,\d{3})+$/.test(chunk))
    throw unusable(
      `${chunk} could be one quantity or more: put a semicolon between quantities, or leave out the comma.`,
    );
  return chunk.split(",");
}

type Term = Parameters<typeof readCell>[0];

/** A blank field is a blank cell: nothing of it, not zero. */
const orBlank =
  (term: Term, name: string) =>
  (typed: string): number | null =>
    typed.trim() === "" ? null : (readCell(term, typed, name) as number);

export const readAmount = orBlank(amountTerm, "amount");
export const readForecast = orBlank(bottlesTerm, "bottles a year");
export const readPounds = orBlank(poundsTerm, "pounds");
export const readHours = orBlank(hoursTerm, "hours");
export const readPerPound = orBlank(perPoundTerm, "price a pound");

/** Days a quote stands, 1 to 365. */
export function readDays(typed: string): number {
  const days = Number(typed.trim());
  if (typed.trim() === "" || !Number.isInteger(days) || days < 1 || days > 365)
    throw unusable("Type whole days, from 1 to 365.");
  return days;
}
