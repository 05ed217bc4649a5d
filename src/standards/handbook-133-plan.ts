/**
 * Category A sampling: by lot, how many packages to take, the factor on their spread and how many may be short by more than
 * the allowed shortfall. A lot of one has no factor. The factor of 48 is 0.291, where a plain calculation gives 0.290.
 * Source: hb133Plan (from memory).
 */
export const handbook133Plan = [
  { lotUpTo: 1, sample: 1, factor: undefined, allowed: 0 },
  { lotUpTo: 2, sample: 2, factor: 8.985, allowed: 0 },
  { lotUpTo: 3, sample: 3, factor: 2.484, allowed: 0 },
  { lotUpTo: 4, sample: 4, factor: 1.591, allowed: 0 },
  { lotUpTo: 5, sample: 5, factor: 1.242, allowed: 0 },
  { lotUpTo: 6, sample: 6, factor: 1.049, allowed: 0 },
  { lotUpTo: 7, sample: 7, factor: 0.925, allowed: 0 },
  { lotUpTo: 8, sample: 8, factor: 0.836, allowed: 0 },
  { lotUpTo: 9, sample: 9, factor: 0.769, allowed: 0 },
  { lotUpTo: 10, sample: 10, factor: 0.715, allowed: 0 },
  { lotUpTo: 11, sample: 11, factor: 0.672, allowed: 0 },
  { lotUpTo: 250, sample: 12, factor: 0.635, allowed: 0 },
  { lotUpTo: 3_200, sample: 24, factor: 0.422, allowed: 0 },
  { lotUpTo: Infinity, sample: 48, factor: 0.291, allowed: 1 },
] as const;
