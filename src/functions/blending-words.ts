import type { Brix, MoneyPerKg } from "../measures/quantity";
import {
  blendBrix,
  blendColor,
  blendPrice,
  type Part,
} from "../trade/blending/blend";
import {
  type BlendDraw,
  type BlendLot,
  cheapestAlone,
  type WantedBlend,
} from "../trade/blending/least-cost";
import { unknownOrganic } from "./blending-blocked";
import { pounds, sumInWords } from "./blending-rows";
import { perPound } from "./by-weight";
import { dollars, entered, figure } from "./wording";

/** Shown wherever the colour of a blend is worked out and not measured. */
export const testFirst =
  "The colour of a blend is an estimate: mix a sample and test it before packing.";

/** The figures of a blend; its transmission is unknown where a drawn lot has none. */
export function blendOf(draws: readonly BlendDraw[]): {
  readonly brix: Brix;
  readonly light: number | undefined;
  readonly price: MoneyPerKg;
} {
  const of = <F extends number>(
    figureOf: (lot: BlendLot) => F,
  ): readonly Part<F>[] =>
    draws.map(({ lot, weight }) => ({ weight, figure: figureOf(lot) }));
  const measured = draws.every(({ lot }) => lot.transmittance !== undefined);
  return {
    brix: blendBrix(of(({ brix }) => brix)),
    light: measured
      ? blendColor(of(({ transmittance }) => transmittance ?? 0))
      : undefined,
    price: blendPrice(of(({ price }) => price)),
  };
}

/** One line: what is drawn and what it costs, against which limits, and what a packer must not overlook. */
export function blendInWords(
  draws: readonly BlendDraw[],
  lots: readonly BlendLot[],
  wanted: WantedBlend,
): string {
  const { brix, light, price } = blendOf(draws);
  const parts = draws.map(({ lot, weight }) => ({
    name: lot.name,
    weight,
    figure: lot.price,
  }));
  const money = draws.reduce((sum, d) => sum + d.weight * d.lot.price, 0);
  return [
    `${sumInWords(parts, (p) => dollars(perPound(p)))} = ${dollars(money)} for ${pounds(wanted.weight)}, ${dollars(perPound(price))} per lb`,
    `${figure(brix, 6)} °Bx (${brixAsked(wanted)})`,
    light === undefined
      ? "transmission not known"
      : `about ${figure(light, 4)} % transmission${wanted.transmittanceMin === undefined ? "" : ` (at least ${entered(wanted.transmittanceMin)})`}, an estimate: test before packing`,
    ...againstOneLot(draws, lots, wanted),
    ...mixed(draws),
  ]
    .join("; ")
    .concat(unknownOrganic(lots, wanted));
}

const brixAsked = ({ brixMin, brixMax }: WantedBlend): string =>
  `at least ${entered(brixMin)}${brixMax === undefined ? "" : `, at most ${entered(brixMax)}`}`;

function againstOneLot(
  draws: readonly BlendDraw[],
  lots: readonly BlendLot[],
  wanted: WantedBlend,
): readonly string[] {
  if (draws.length < 2) return [];
  const alone = cheapestAlone(lots, wanted);
  return alone
    ? [
        `one lot alone would be "${alone.name}" at ${dollars(perPound(alone.price))} per lb`,
      ]
    : ["no lot makes it alone"];
}

function mixed(draws: readonly BlendDraw[]): readonly string[] {
  const organic = draws.filter(({ lot }) => lot.organic === true).length;
  return organic > 0 && organic < draws.length
    ? ["it mixes organic and ordinary syrup, so it is not organic"]
    : [];
}
