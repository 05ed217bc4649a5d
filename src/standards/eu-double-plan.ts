/**
 * Counting short packs in two samples: by lot, the size of each sample, and how many short packs accept or reject the lot after
 * the first and after both together. Source: euPrepackages.
 */
export const euDoublePlan = [
  { lotUpTo: 500, sample: 30, first: [1, 3], both: [4, 5] },
  { lotUpTo: 3_200, sample: 50, first: [2, 5], both: [6, 7] },
  { lotUpTo: Infinity, sample: 80, first: [3, 7], both: [8, 9] },
] as const;
