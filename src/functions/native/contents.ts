import { LITRES_PER_GALLON } from "../../measures/units";
import { allowedShortfall } from "../../standards/allowed-shortfall";
import { allowedShortfallScope } from "../../standards/allowed-shortfall-scope";
import { euDoublePlan } from "../../standards/eu-double-plan";
import { euSmallLots } from "../../standards/eu-small-lots";
import { handbook133Plan } from "../../standards/handbook-133-plan";
import { oimlPlan, oimlSmallestLot } from "../../standards/oiml-plan";
import { typeHeights } from "../../standards/type-height";
import {
  type ContentsRule,
  printedFactors,
  twoSidedChance,
} from "../../trade/contents/sampling";
import {
  nativeColdDensity,
  nativeDensity,
  nativeInAir,
  nativePoundsPerGallon,
} from "./density";
import { decimal, pick } from "./formula";

type Call<K extends string> = { readonly [A in K]: string };

export function nativeNetVolume(
  call: Call<"gross" | "tare" | "brix" | "temperature">,
): string {
  const { gross, tare, brix, temperature } = call;
  const warm = nativeDensity(brix, temperature);
  const held = `(${gross}-${tare})*1000/${nativeInAir(warm)}*${warm}/${nativeColdDensity(brix)}`;
  return `IF(${gross}>=${tare},${held},NA())`;
}

export const nativeSampleSize = ({
  lot_size: lot,
  rule,
}: Call<"lot_size" | "rule">): string =>
  pick(rule, [
    ["US", bySize(lot, handbook133Plan.map(step))],
    [
      "EU",
      `IF(${lot}<${euSmallLots.below},${lot},${bySize(lot, euDoublePlan.map(step))})`,
    ],
    [
      "OIML",
      `IF(${lot}<${oimlSmallestLot},NA(),${bySize(lot, oimlPlan.map(step))})`,
    ],
  ]);

const step = ({
  lotUpTo,
  sample,
}: {
  readonly lotUpTo: number;
  readonly sample: number;
}): Step => [lotUpTo, String(sample)];

export const nativeSampleFactor = ({ n, rule }: Call<"n" | "rule">): string =>
  `IF(${n}<2,NA(),${pick(
    rule,
    (["US", "EU", "OIML"] as const).map((name) => [name, factorOf(n, name)]),
  )})`;

function factorOf(n: string, rule: ContentsRule): string {
  const workedOut = `TINV(${decimal(twoSidedChance[rule])},${n}-1)/SQRT(${n})`;
  return printedFactors(rule).reduceRight(
    (otherwise, { sample, factor }) =>
      factor === undefined
        ? otherwise
        : `IF(${n}=${sample},${decimal(factor)},${otherwise})`,
    workedOut,
  );
}

export function nativeAllowedShort({
  declared,
  rule,
}: Call<"declared" | "rule">): string {
  const inTable = bySize(
    declared,
    allowedShortfall.map((row) => [
      row.upTo,
      "amount" in row
        ? decimal(row.amount)
        : `${declared}*${decimal(row.percent)}/100`,
    ]),
  );
  const { EU, OIML, Canada } = allowedShortfallScope;
  const within = (
    scope: { readonly least: number; readonly most: number },
    formula: string,
  ): string =>
    `IF(OR(${declared}<${scope.least},${declared}>${scope.most}),NA(),${formula})`;
  const tenths = `(-INT(-ROUND((${inTable})*10,6))/10)`;
  const wholes = `(-INT(-ROUND(${inTable},6)))`;
  return pick(rule, [
    ["EU", within(EU, tenths)],
    ["OIML", within(OIML, `IF(${declared}<=1000,${tenths},${wholes})`)],
    ["Canada", within(Canada, inTable)],
  ]);
}

export function nativeOverfillCost(
  call: Call<"volumes" | "declared" | "bottles" | "brix" | "price">,
): string {
  const { volumes, declared, bottles, brix, price } = call;
  const over = `(SUM(${volumes})/COUNT(${volumes})-${declared})`;
  return `(${over}/1000/${decimal(LITRES_PER_GALLON)}*${bottles}*${nativePoundsPerGallon(brix, "68")}*${price})`;
}

export const nativeFillTarget = (
  call: Call<"declared" | "spread" | "allowed_short" | "risk" | "house_margin">,
): string =>
  `IF(${call.spread}>0,MAX(${call.declared}+${call.house_margin},${call.declared}-${call.allowed_short}-NORMSINV(${call.risk})*${call.spread}),NA())`;

export const nativeTypeHeight = ({
  panel_area: area,
}: Call<"panel_area">): string =>
  bySize(
    area,
    typeHeights.map(({ upTo, height }) => [upTo, decimal(height)]),
  );

type Step = readonly [upTo: number, formula: string];

/** Formula text that finds the first step a size fits into; the last step takes all that is larger. */
const bySize = (size: string, steps: readonly Step[]): string =>
  steps
    .slice(0, -1)
    .reduceRight(
      (larger, [upTo, formula]) => `IF(${size}<=${upTo},${formula},${larger})`,
      steps.at(-1)?.[1] ?? "NA()",
    );
