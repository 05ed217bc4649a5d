import type { Family } from "../../../functions/define";
import {
  as,
  type Brix,
  type Celsius,
  type Share,
} from "../../../measures/quantity";
import { KG_PER_LB } from "../../../measures/units";
import { blendBrix } from "../../../trade/blending/blend";
import { netVolume } from "../../../trade/contents/net-volume";
import { syrupPerBottle } from "../../../trade/costing/syrup-per-bottle";
import { hotVolume } from "../../../trade/filling/hot-volume";
import { lineRate } from "../../../trade/lines/line-rate";
import { priceForMargin } from "../../../trade/pricing/margin";
import {
  density,
  densityInAir,
  poundsPerGallon,
} from "../../../trade/syrup/density";
import { saleAmount } from "../../../trade/totes/sale-amount";

const lotWeights = [[3000], [2000], [1500], [800]] as const;

/** A function as a worksheet calls it, and the bare trade arithmetic for the same figures in house units. */
export interface Call {
  readonly family: Family;
  readonly name: string;
  readonly args: (i: number) => readonly unknown[];
  readonly bare: (i: number) => number;
  /** Takes ranges, which are read cell by cell: the aim is for functions of single values. */
  readonly ranges?: true;
}

const hot = as<Celsius>(85);

export const calls: readonly Call[] = [
  {
    family: "Syrup",
    name: "DENSITY",
    args: (i) => [60 + i / 10, 185],
    bare: (i) => density(as(60 + i / 10), hot),
  },
  {
    family: "Syrup",
    name: "POUNDS_PER_GALLON",
    args: (i) => [60 + i / 10],
    bare: (i) => poundsPerGallon(as(60 + i / 10)),
  },
  {
    family: "Filling",
    name: "HOT_VOLUME",
    args: (i) => [250, 60 + i / 10, 185],
    bare: (i) => hotVolume(as(0.25), as(60 + i / 10), hot) * 1000,
  },
  {
    family: "Cost",
    name: "SYRUP_PER_BOTTLE",
    args: (i) => [250, 60 + i / 10, 0.02],
    bare: (i) =>
      syrupPerBottle(as(0.25), densityInAir(as(60 + i / 10)), as<Share>(0.02)) /
      KG_PER_LB,
  },
  {
    family: "Blending",
    name: "BLEND_BRIX",
    ranges: true,
    args: (i) => [lotWeights, [[60 + i / 10], [65], [66], [67]]],
    bare: (i) =>
      blendBrix(
        [60 + i / 10, 65, 66, 67].map((brix, lot) => ({
          weight: as((lotWeights[lot]?.[0] ?? 0) * KG_PER_LB),
          figure: as<Brix>(brix),
        })),
      ),
  },
  {
    family: "Lines and runs",
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
    family: "Price",
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
  {
    family: "Net contents",
    name: "NET_VOLUME",
    args: (i) => [540 + i / 10, 210, 66.9, 72],
    bare: (i) =>
      netVolume({
        gross: as(0.54 + i / 10_000),
        tare: as(0.21),
        brix: as(66.9),
        temperature: as(200 / 9),
      }) * 1000,
  },
  {
    family: "Totes and codes",
    name: "SALE_AMOUNT",
    args: (i) => [2900 + i, 2.45, "per lb at 66", 67.1],
    bare: (i) =>
      saleAmount(
        as((2900 + i) * KG_PER_LB),
        2.45,
        "per lb at 66",
        as<Brix>(67.1),
      ),
  },
];
