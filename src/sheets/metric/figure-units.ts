import { KG_PER_LB, LITRES_PER_GALLON } from "../../measures/units";
import type { SheetKind } from "../handover/topics";

/** Units of the plain copy that have a metric one, and how a figure turns into it: metric = (figure + before) × times. */
export interface Turn {
  readonly to: string;
  /** As it is written in a formula: exact, and readable. Source: usCustomary. */
  readonly times: string;
  readonly factor: number;
  readonly before: number;
}

const turn = (to: string, times: string, factor: number, before = 0): Turn => ({
  to,
  times,
  factor,
  before,
});

const [KG, L] = [String(KG_PER_LB), String(LITRES_PER_GALLON)];

export const turns = {
  lb: turn("kg", KG, KG_PER_LB),
  gal: turn("L", L, LITRES_PER_GALLON),
  "lb/gal": turn("kg/L", `(${KG}/${L})`, KG_PER_LB / LITRES_PER_GALLON),
  "per lb": turn("per kg", `(1/${KG})`, 1 / KG_PER_LB),
  "per gal": turn("per L", `(1/${L})`, 1 / LITRES_PER_GALLON),
  "°F": turn("°C", "(5/9)", 5 / 9, -32),
} as const;

export type UsUnit = keyof typeof turns;

type Listed = readonly (readonly [RegExp, UsUnit])[];

const inUnits: Readonly<Record<SheetKind, Listed>> = {
  costing: [
    [/^(lb_per_bottle|purge|need|lines\.purge|lots\.(left|drawn))$/, "lb"],
    [
      /^(bulk_price|average_price|oldest_price|lots\.price|cost\.price\.\w+)$/,
      "per lb",
    ],
    [/^lb_per_gal$/, "lb/gal"],
    [/^season_gallons$/, "gal"],
    [/^pack_temperature$/, "°F"],
  ],
  prices: [[/^bulk_\d+$/, "per lb"]],
  quote: [],
  totes: [],
};

/** The unit of a figure that has a metric one; undefined for every other figure. */
export const unitOfFigure = (
  kind: SheetKind,
  name: string,
): UsUnit | undefined =>
  inUnits[kind].find(([pattern]) => pattern.test(name))?.[1];

const leftAlone: readonly (readonly [RegExp, string])[] = [
  [
    /^overheads\.(whole|own)$/,
    "counts gallons in some rows, and runs, lots or hours in others",
  ],
  [
    /^(fuel_price|fuel_heat|warming|holding)$/,
    "goes with the fuel as it is sold",
  ],
  [/^list\.per_oz$/, "stands beside the price of a mL"],
];

/** Why a figure in customary units stays in them; undefined for figures of which nothing need be said. */
export const whyLeftAlone = (name: string): string | undefined =>
  leftAlone.find(([pattern]) => pattern.test(name))?.[1];

/** A figure in its metric unit. */
export const inMetric = (unit: UsUnit, value: number): number =>
  (value + turns[unit].before) * turns[unit].factor;
