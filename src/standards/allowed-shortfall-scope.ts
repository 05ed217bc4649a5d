/**
 * Which declared volumes, in mL, each rule's table is for, and to what step it rounds a percentage up. No rounding was
 * read for Canada. Sources: euPrepackages (scope), euLargerPacks (rounding), oimlR87 (from memory), canadaShortfall.
 */
export const allowedShortfallScope = {
  EU: { least: 5, most: 10_000, steps: [{ upTo: 10_000, step: 0.1 }] },
  OIML: {
    least: 5,
    most: 50_000,
    steps: [
      { upTo: 1_000, step: 0.1 },
      { upTo: 50_000, step: 1 },
    ],
  },
  Canada: { least: 0, most: 50_000, steps: [] },
} as const;
