import type { ShortfallRow } from "../support/shortfalls";

/** Weights and Measures Regulations, C.R.C., c. 1605, Schedule II Part III (metric volume), mL; current to 2024-02-20. */
export const canadaShortfalls: readonly ShortfallRow[] = [
  { over: 0, upTo: 50, percent: 9 },
  { over: 50, upTo: 100, amount: 4.5 },
  { over: 100, upTo: 200, percent: 4.5 },
  { over: 200, upTo: 300, amount: 9 },
  { over: 300, upTo: 500, percent: 3 },
  { over: 500, upTo: 1000, amount: 15 },
  { over: 1000, upTo: 10_000, percent: 1.5 },
  { over: 10_000, upTo: 15_000, amount: 150 },
  { over: 15_000, upTo: 50_000, percent: 1 },
];
