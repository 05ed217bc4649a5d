import type { Printed } from "../support/published";
import type { ShortfallRow } from "../support/shortfalls";

/** Directive 76/211/EEC Annex I 2.4, as replaced by 78/891/EEC. The rows above 1,000 mL were not read. */
export const euShortfalls: readonly ShortfallRow[] = [
  { over: 5, upTo: 50, percent: 9 },
  { over: 50, upTo: 100, amount: 4.5 },
  { over: 100, upTo: 200, percent: 4.5 },
  { over: 200, upTo: 300, amount: 9 },
  { over: 300, upTo: 500, percent: 3 },
  { over: 500, upTo: 1000, amount: 15 },
];

/** Article 1: packs of 5 mL to 10 L. */
export const euScope = { least: 5, most: 10_000 } as const;

/** Annex II 2.2.1: lot, sample, accept and reject after the first sample and after both. */
export const euDoublePlans = [
  { lots: [100, 500], sample: 30, accept: [1, 4], reject: [3, 5] },
  { lots: [501, 3200], sample: 50, accept: [2, 6], reject: [5, 7] },
  { lots: [3201, 10_000], sample: 80, accept: [3, 8], reject: [7, 9] },
] as const;

/** Annex II 2.3, the same in UK SI 2006/659 Schedule 2 paragraph 4. */
export const euMeanFactor: Printed = {
  source: "Directive 76/211/EEC Annex II 2.3",
  readAt: "the directive and the UK regulation on a legislation site",
  quantity: "factor on the spread of the sample",
  unit: "",
  columns: ["packs"],
  decimals: 3,
  rows: [
    [20, 0.64],
    [30, 0.503],
    [50, 0.379],
  ],
};

/** UK SI 2006/659 Schedule 2 paragraph 3: of a lot below 100 every pack is checked and 5 % may be defective. */
export const ukSmallLot = { below: 100, acceptedShare: 0.05 } as const;
