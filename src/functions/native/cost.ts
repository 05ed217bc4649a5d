import { nativePoundsPerGallon } from "./density";
import { leftOut, wholeUp } from "./lines";

const POUNDS_IN = { kg: "0.45359237", g: "453.59237", oz: "16" } as const;

interface Filled {
  readonly volume: string;
  readonly brix: string;
  readonly loss: string;
}

const nativePoundsPerBottle = ({ volume, brix, loss }: Filled): string =>
  `${volume}/3785.411784*${nativePoundsPerGallon(brix, "68")}/(1-${loss})`;

export const nativeSyrupPerBottle = (
  call: Filled & { readonly unit: string },
): string =>
  `(${nativePoundsPerBottle(call)}*IF(${call.unit}="kg",${POUNDS_IN.kg},IF(${call.unit}="g",${POUNDS_IN.g},IF(${call.unit}="oz",${POUNDS_IN.oz},1))))`;

export const nativeSyrupCost = (
  call: Filled & { readonly price: string },
): string => `(${nativePoundsPerBottle(call)}*${call.price})`;

export const nativePieces = (call: {
  readonly bottles: string;
  readonly per_bottle: string;
  readonly spoilage: string;
  readonly carton: string;
}): string =>
  `(${wholeUp(`${call.bottles}*${call.per_bottle}/(1-${call.spoilage})/${call.carton}`)}*${call.carton})`;

const column = (range: string, number: number): string =>
  `INDEX(${range},0,${number})`;

/** The largest number of a column that is not above a value: as many places down from the top as there are larger ones. */
const largestUpTo = (numbers: string, limit: string): string =>
  `LARGE(${numbers},COUNTIF(${numbers},">"&${limit})+1)`;

export function nativeBreakPrice(call: {
  readonly pieces: string;
  readonly breaks: string;
}): string {
  const from = column(call.breaks, 1);
  return `IF(${call.pieces}<MIN(${from}),NA(),INDEX(${column(call.breaks, 2)},MATCH(${largestUpTo(from, call.pieces)},${from},0)))`;
}

export function nativePriceOn(call: {
  readonly item: string;
  readonly date: string;
  readonly prices: string;
}): string {
  const [item, from, price] = [1, 2, 3].map((n) => column(call.prices, n));
  const known = `(${item}=${call.item})*(${from}<=${call.date})`;
  const latest = `SUMPRODUCT(MAX(${known}*${from}))`;
  return `IF(SUMPRODUCT(${known})=0,NA(),SUMPRODUCT((${item}=${call.item})*(${from}=${latest})*${price}))`;
}

export const nativeCostTotal = (call: {
  readonly names: string;
  readonly amounts: string;
}): string =>
  `IF(SUMPRODUCT(--((${call.names}<>"")<>ISNUMBER(${call.amounts})))>0,VALUE("needs a part"),SUM(${call.amounts}))`;

/** The lot received last (of one day, the last row) by the day asked about. */
function nativeReplacement(lots: string, asOf: string): string {
  const received = column(lots, 1);
  const newest =
    asOf === leftOut ? `MAX(${received})` : largestUpTo(received, asOf);
  const place = `(ROW(${received})-MIN(ROW(${received}))+1)`;
  return `INDEX(${column(lots, 3)},SUMPRODUCT(MAX((${received}=${newest})*${place})))`;
}

export function nativeLotCost(call: {
  readonly method: string;
  readonly weight: string;
  readonly lots: string;
  readonly as_of: string;
}): string {
  const { method, weight, lots, as_of: asOf } = call;
  const [received, left, price] = [1, 2, 3].map((n) => column(lots, n));
  const there = asOf === leftOut ? "1" : `(${received}<=${asOf})`;
  const stock = `SUMPRODUCT(${there}*${left})`;
  const value = `SUMPRODUCT(${there}*${left}*${price})`;
  // What the older lots have not covered, no less than nothing and no more than the lot holds.
  const open = `(${weight}-SUMIF(${received},"<"&${received},${left}))`;
  const taken = `(${open}>0)*((${open}<${left})*${open}+(${open}>=${left})*${left})`;
  // Which of two lots of one day is drawn first, their rows decide, and these formulas do not see rows: they refuse.
  const twice = `SUMPRODUCT(${there}*(COUNTIF(${received},${received})>1))>0`;
  return (
    `IF(${method}="replacement",${weight}*${nativeReplacement(lots, asOf)},` +
    `IF(${weight}>${stock},NA(),IF(${method}="average",${weight}*${value}/${stock},` +
    `IF(${twice},NA(),SUMPRODUCT(${there}*${taken}*${price})))))`
  );
}
