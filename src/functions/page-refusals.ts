import { blendingRefusals } from "./blending-refusals";
import type { Raw } from "./define";
import { toteRefusals } from "./totes-refusals";

/** A call that no limit of an argument refuses by itself, and what is wrong with it in trade words. */
export interface Refusal {
  readonly when: string;
  readonly args: readonly Raw[];
}

const kettle = [120, 66.9, 185, 252] as const;
const lots = [
  ["2026-03-20", 1000, 2.4],
  ["2026-04-08", 500, 2.6],
] as const;
const breaks = [
  [504, 1.42],
  [2016, 1.21],
] as const;
const prices = [
  ["BTL-250", "2026-05-01", 1.42],
  ["CAP-28", "2026-01-01", 0.115],
  ["CAP-28", "2026-01-01", 0.12],
] as const;

/** By function: the page shows the sentence that each of these calls gets. */
export const refusals: Readonly<Record<string, readonly Refusal[]>> = {
  ...blendingRefusals,
  BRIX_FROM_DENSITY: [
    { when: "no syrup of 0-85 °Bx is so dense", args: [1.6] },
    { when: "no syrup of 0-85 °Bx is so light", args: [0.9] },
  ],
  BRIX_FROM_BAUME: [{ when: "no syrup of 0-85 °Bx reads so high", args: [60] }],
  BRIX_FROM_INDEX: [
    { when: "no syrup of 0-85 °Bx has this index", args: [1.5045] },
    { when: "the sample is too warm to correct", args: [1.4559, 100] },
  ],
  BRIX_CORRECTED: [
    { when: "the sample is too warm for a refractometer", args: [66, 100] },
    { when: "the reading corrects to below nothing", args: [0.1, 50] },
    {
      when: "no syrup makes the float read so high",
      args: [85, 212, "hydrometer 60 F"],
    },
  ],
  HYDROMETER_READING: [
    { when: "the float sinks beyond its scale", args: [0, 200, 60, "Baume"] },
  ],
  HEADSPACE: [
    { when: "the hot fill does not fit", args: [255, 250, 66.9, 185] },
  ],
  KETTLE_BOTTLES: [
    { when: "as much is left behind as there is", args: [...kettle, 120] },
    { when: "the purge takes it all", args: [...kettle, 0, 2000] },
  ],
  FUEL_FOR_HEAT: [
    { when: "nothing of the heat arrives", args: [106_000, "propane", 0] },
  ],
  LINE_RATE: [
    {
      when: "a station has no rate",
      args: [8, 12, 10, 1, [["cap bench", null]]],
    },
  ],
  LINE_LIMIT: [
    { when: "a station has no name", args: [8, 12, 10, 1, 720] },
    {
      when: "a station has no rate",
      args: [8, 12, 10, 1, [["cap bench", null]]],
    },
  ],
  LINE_CROSSOVER: [
    { when: "b is never cheaper", args: [100, 0.05, 600, 0.15] },
    { when: "b is always cheaper", args: [600, 0.15, 100, 0.05] },
    { when: "b is cheaper for small runs only", args: [600, 0.05, 100, 0.15] },
    { when: "the lines cost the same", args: [100, 0.05, 100, 0.05] },
  ],
  USABLE_PRICE: [
    { when: "nothing usable is left", args: [2.4, 1000, 0.05, 950] },
  ],
  BREAK_PRICE: [
    { when: "fewer pieces than the first break", args: [300, breaks] },
    {
      when: "two prices from one quantity",
      args: [
        600,
        [
          [504, 1.42],
          [504, 1.4],
        ],
      ],
    },
  ],
  LOT_COST: [
    { when: "more than is in stock", args: ["oldest first", 1620, lots] },
    {
      when: "no lot had come in by that day",
      args: ["replacement", 100, lots, "2026-01-31"],
    },
  ],
  PRICE_ON: [
    { when: "the item is not in the list", args: ["LBL-1", 46_000, prices] },
    {
      when: "no price holds yet",
      args: ["BTL-250", "2026-04-30", prices],
    },
    {
      when: "two prices from one day",
      args: ["CAP-28", "2026-04-30", prices],
    },
  ],
  COST_TOTAL: [
    {
      when: "a part has no amount",
      args: [
        [["syrup"], ["caps"]],
        [[1.91], [null]],
      ],
    },
    {
      when: "an amount has no name",
      args: [
        [["syrup"], [null]],
        [[1.91], [0.12]],
      ],
    },
    {
      when: "names and amounts do not stand side by side",
      args: [[["syrup"], ["glass"], ["caps"]], [[1.91]]],
    },
  ],
  PRICE_FOR_MARGIN: [
    { when: "margin and fees take it all", args: [4.85, 0.9, 0.1] },
  ],
  ROUND_PRICE: [
    { when: "no such price is low enough", args: [0.5, 0.99, "down"] },
  ],
  BREAK_EVEN_UNITS: [
    { when: "a unit does not earn its cost", args: [1850, 4.7, 4.7] },
  ],
  ALLOCATE: [
    { when: "a driver is blank", args: [10_600, [[13], [null], [18]]] },
    { when: "the drivers sum to 0", args: [10_600, [[0], [0]]] },
  ],
  AGED_PRICE: [
    {
      when: "the barrel is sold for more than it cost",
      args: [1430, 500, 165, 2, 8, 5, 0.09, 180],
    },
  ],
  NET_VOLUME: [
    { when: "full and empty are swapped", args: [248.3, 579.8, 66.9] },
  ],
  DECLARED_VOLUME: [
    { when: "a number has no unit", args: ["12 (355 mL)"] },
    { when: "the label gives a weight", args: ["NET WT 16 oz"] },
    { when: "the gallon is an imperial one", args: ["1 imp gal (4.55 L)"] },
    { when: "nothing is declared", args: ["Pure maple syrup"] },
  ],
  SAMPLE_SIZE: [
    { when: "the plans for the lot are not known", args: [60, "OIML"] },
  ],
  SAMPLE_FACTOR: [{ when: "one bottle was weighed", args: [1] }],
  ALLOWED_SHORT: [
    { when: "the US table is asked for", args: [250, "US"] },
    { when: "the pack is outside the table", args: [12_000, "EU"] },
  ],
  LOT_VERDICT: [
    {
      when: "more bottles were weighed than the lot has",
      args: [[[250], [251], [249]], 250, 2, 13],
    },
    {
      when: "the allowed shortfall is no smaller than the bottle",
      args: [[[250], [251], [249]], 13, 200, 250],
    },
    {
      when: "the plans for the lot are not known",
      args: [[[250], [251], [249]], 250, 60, 9, "OIML"],
    },
  ],
  FILL_TARGET: [
    { when: "all bottles were alike", args: [250, 0, 9] },
    { when: "declared and allowed are swapped", args: [9, 1.4, 250] },
  ],
  HEAD_SPREAD: [
    {
      when: "a bottle has no head",
      args: [
        [[251], [249]],
        [[1], [null]],
      ],
    },
    {
      when: "a head is no whole number",
      args: [
        [[251], [249]],
        [[1], [2.5]],
      ],
    },
  ],
  LOT_CODE: [
    {
      when: "the time is no time of day",
      args: ["2026-11-25", "2", "25:00"],
    },
    {
      when: "the pattern has no day of the year",
      args: ["2026-11-25", "2", "14:30", "YY-L"],
    },
  ],
  ...toteRefusals,
};
