import { as, type ColdLitres } from "../../measures/quantity";

/** A volume as a Canadian label declares it. */
export interface MetricDeclaration {
  readonly amount: number;
  readonly unit: "mL" | "L";
  readonly volume: ColdLitres;
}

/**
 * Millilitres below 1 L, litres from 1 L, in three figures, rounded down so that the label never says more than is meant.
 * Source: canadaNetQuantity; rounding down is ours.
 */
export function metricDeclaration(volume: ColdLitres): MetricDeclaration {
  const isLarge = volume >= 1;
  const exact = isLarge ? volume : volume * 1000;
  const amount = threeFiguresDown(exact);
  return {
    amount,
    unit: isLarge ? "L" : "mL",
    volume: as<ColdLitres>(isLarge ? amount : amount / 1000),
  };
}

/** 354.88 is 354 and 3.78541 is 3.78; 250 stays 250 whatever noise a change of unit left in it. */
export function threeFiguresDown(value: number): number {
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(value)));
  const step = 10 ** decimals;
  return Math.floor(Number((value * step).toPrecision(12))) / step;
}
