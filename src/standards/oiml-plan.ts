/**
 * Sampling of lots of 100 and more: the sample, the factor on its spread and how many packs may be short. Source: oimlR87
 * (from memory).
 */
export const oimlPlan = [
  { lotUpTo: 500, sample: 50, factor: 0.379, allowed: 3 },
  { lotUpTo: 3_200, sample: 80, factor: 0.295, allowed: 5 },
  { lotUpTo: Infinity, sample: 125, factor: 0.234, allowed: 7 },
] as const;

/** The plans for smaller lots were not read. Source: oimlR87. */
export const oimlSmallestLot = 100;
