import { createRequire } from "node:module";
import path from "node:path";
import { answer } from "../../../functions/answer";
import { definitionOf, same } from "./calls";
import { compared } from "./clock";
import type { Figure } from "./figure";

/** The functions of a general worksheet library that do the same work as one of ours. */
interface GeneralLibrary {
  readonly SUM: (...cells: readonly unknown[]) => number;
  readonly SUMPRODUCT: (...columns: readonly unknown[]) => number;
  readonly EDATE: (day: number, months: number) => Date;
  readonly LOOKUP: (
    value: number,
    sorted: readonly number[],
    results: readonly number[],
  ) => number;
  readonly DAYS: (end: number, start: number) => number;
  readonly NORM: { readonly S: { readonly INV: (share: number) => number } };
}

interface Pair {
  readonly name: string;
  readonly theirs: string;
  readonly args: (i: number) => readonly unknown[];
  readonly general: (library: GeneralLibrary, i: number) => number;
}

const weights = [[3000], [2000], [1500], [800]] as const;
const names = ["syrup", "glass", "cap", "label", "work", "case"].map((n) => [
  n,
]);
const priceDays = Array.from({ length: 20 }, (_, i) => 45_000 + 30 * i);
const DAY_MS = 86_400_000;
/** Serial 25,569 is 1 January 1970. */
const serialOf = (day: Date): number =>
  Math.round((day.getTime() - day.getTimezoneOffset() * 60_000) / DAY_MS) +
  25_569;

const prices = (i: number): readonly (readonly number[])[] => [
  [2.1 + i / 100],
  [2.3],
  [2.5],
  [2.7],
];
const amounts = (i: number): readonly (readonly number[])[] => [
  [1.9 + i / 100],
  [1.45],
  [0.12],
  [0.18],
  [0.62],
  [0.2],
];

const pairs: readonly Pair[] = [
  {
    name: "BLEND_PRICE",
    theirs: "SUMPRODUCT ÷ SUM",
    args: (i) => [weights, prices(i)],
    general: ({ SUMPRODUCT, SUM }, i) =>
      SUMPRODUCT(weights, prices(i)) / SUM(weights),
  },
  {
    name: "COST_TOTAL",
    theirs: "SUM",
    args: (i) => [names, amounts(i)],
    general: ({ SUM }, i) => SUM(amounts(i)),
  },
  {
    name: "BEST_BY",
    theirs: "EDATE",
    args: (i) => [46_000 + i, 24],
    general: ({ EDATE }, i) => serialOf(EDATE(46_000 + i, 24)),
  },
  {
    name: "PRICE_ON",
    theirs: "LOOKUP, over sorted days",
    args: (i) => [
      "BTL-250",
      45_010 + i,
      priceDays.map((day, row) => ["BTL-250", day, 1 + row / 100]),
    ],
    general: ({ LOOKUP }, i) =>
      LOOKUP(
        45_010 + i,
        priceDays,
        priceDays.map((_, row) => 1 + row / 100),
      ),
  },
  {
    name: "DAYS_LATE",
    theirs: "DAYS",
    args: (i) => [46_000, 46_001 + i],
    general: ({ DAYS }, i) => DAYS(46_001 + i, 46_000),
  },
  {
    name: "FILL_TARGET",
    theirs: "NORM.S.INV and arithmetic",
    args: (i) => [250, 4 + i / 100, 7],
    general: ({ NORM }, i) =>
      Math.max(250, 250 - 7 + NORM.S.INV(1 - 0.005) * (4 + i / 100)),
  },
];

const CALLS = 5_000;
const VARIED = 64;

/** A call of ours, arguments read and checked, against the function of a general library that does the same work. */
export async function generalFigures(
  root: string,
  rounds: number,
): Promise<readonly Figure[]> {
  // Not bundled: it is here to be compared with.
  const library = createRequire(path.join(root, "package.json"))(
    "@formulajs/formulajs",
  ) as GeneralLibrary;
  const figures: Figure[] = [];
  for (const { name, theirs, args, general } of pairs) {
    const definition = definitionOf(name);
    same(name, answer(definition, args(7)), general(library, 7), 1e-8);
    const { milliseconds, yardstick, ratio } = await compared(
      rounds,
      () => repeated((i) => answer(definition, args(i))),
      () => repeated((i) => general(library, i)),
    );
    figures.push({
      work: `\`${name}\` against ${theirs}`,
      takes: microseconds(milliseconds),
      yardstick: microseconds(yardstick),
      ratio,
    });
  }
  return figures;
}

function repeated(call: (i: number) => unknown): unknown {
  let last: unknown;
  for (let i = 0; i < CALLS; i += 1) last = call(i % VARIED);
  return last;
}

const microseconds = (milliseconds: number): string =>
  `${((milliseconds * 1000) / CALLS).toFixed(2)} µs`;
