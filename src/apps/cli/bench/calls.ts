import { functionNamed } from "../../../functions";
import { answer } from "../../../functions/answer";
import type { Definition } from "../../../functions/define";
import { as, type Celsius, type Share } from "../../../measures/quantity";
import { KG_PER_LB } from "../../../measures/units";
import { syrupPerBottle } from "../../../trade/costing/syrup-per-bottle";
import { hotVolume } from "../../../trade/filling/hot-volume";
import { lineRate } from "../../../trade/lines/line-rate";
import { priceForMargin } from "../../../trade/pricing/margin";
import {
  density,
  densityInAir,
  poundsPerGallon,
} from "../../../trade/syrup/density";
import { compared } from "./clock";
import type { Figure } from "./figure";

/** A function as a worksheet calls it, and the bare trade arithmetic for the same figures in house units. */
interface Call {
  readonly name: string;
  readonly args: (i: number) => readonly unknown[];
  readonly bare: (i: number) => number;
}

const hot = as<Celsius>(85);

const calls: readonly Call[] = [
  {
    name: "DENSITY",
    args: (i) => [60 + i / 10, 185],
    bare: (i) => density(as(60 + i / 10), hot),
  },
  {
    name: "POUNDS_PER_GALLON",
    args: (i) => [60 + i / 10],
    bare: (i) => poundsPerGallon(as(60 + i / 10)),
  },
  {
    name: "HOT_VOLUME",
    args: (i) => [250, 60 + i / 10, 185],
    bare: (i) => hotVolume(as(0.25), as(60 + i / 10), hot) * 1000,
  },
  {
    name: "SYRUP_PER_BOTTLE",
    args: (i) => [250, 60 + i / 10, 0.02],
    bare: (i) =>
      syrupPerBottle(as(0.25), densityInAir(as(60 + i / 10)), as<Share>(0.02)) /
      KG_PER_LB,
  },
  {
    name: "LINE_RATE",
    args: (i) => [8, 10 + i, 10, 0.78],
    bare: (i) =>
      lineRate({
        count: 8,
        fill: as(10 + i),
        handling: as(10),
        running: as(0.78),
      }),
  },
  {
    name: "PRICE_FOR_MARGIN",
    args: (i) => [4 + i / 10, 0.35],
    bare: (i) =>
      priceForMargin({
        cost: as(4 + i / 10),
        margin: as(0.35),
        feeShare: as(0),
        fixedFee: as(0),
      }),
  },
];

const CALLS = 20_000;
/** Different figures for neighbouring calls, so that nothing can be worked out once for all of them. */
const VARIED = 64;

/** What a worksheet call costs beyond its arithmetic: reading and checking its arguments, and checking its answer. */
export async function callFigures(rounds: number): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const { name, args, bare } of calls) {
    const definition = definitionOf(name);
    const written = Array.from({ length: VARIED }, (_, i) => args(i));
    same(name, answer(definition, args(7)), bare(7));
    const { milliseconds, yardstick, ratio } = await compared(
      rounds,
      () => repeated((i) => answer(definition, written[i] ?? [])),
      () => repeated(bare),
    );
    figures.push({
      work: `\`${name}\``,
      takes: nanoseconds(milliseconds),
      yardstick: nanoseconds(yardstick),
      ratio,
      aim: "under 3 times",
      isMet: ratio < 3,
    });
  }
  return figures;
}

export function definitionOf(name: string): Definition {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`There is no function ${name} to measure`);
  return definition;
}

/** Two things that do not give the same answer are not worth comparing. */
export function same(work: string, given: unknown, bare: number): void {
  if (Math.abs(Number(given) - bare) > 1e-9 * Math.abs(bare))
    throw new Error(`${work} gives ${String(given)}, its yardstick ${bare}`);
}

function repeated(call: (i: number) => unknown): unknown {
  let last: unknown;
  for (let i = 0; i < CALLS; i += 1) last = call(i % VARIED);
  return last;
}

const nanoseconds = (milliseconds: number): string =>
  `${((milliseconds * 1e6) / CALLS).toFixed(0)} ns`;
